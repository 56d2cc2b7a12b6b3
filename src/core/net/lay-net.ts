import { checkOnce } from '../styles/language/check-style';
import { defaultChoices, piecesOf, WHOLE } from '../styles/language/define';
import type { BoxStyle } from '../styles/language/types';
import { fitsOf } from './lay-fits';
import { layCorners, layPiece, type PieceCorners } from './lay-piece';
import { lengthOf, type NamedValues, nameValues, type Sizing } from './name-values';
import type { BoxNet, PieceNet } from './types';

/** A style at these sizes: one flat net a piece of card. Total: sizes that break the style's limits still give a net, and the checks say what is wrong. */
export function layNet(style: BoxStyle, sizing: Sizing): BoxNet {
  checkOnce(style);
  const values = nameValues(style, sizing);
  const options = { ...defaultChoices(style), ...sizing.options };
  return {
    styleId: style.id,
    pieces: Object.entries(piecesOf(style, sizing.options)).map(([id, piece]) => layPiece(id, piece, values)),
    ...(style.whole === undefined ? {} : { whole: layPiece(WHOLE, style.whole, values) }),
    values: values.lengths,
    options,
    inside: insideOf(style, values),
    ...(style.sidesRenamed && { sidesRenamed: style.sidesRenamed }),
    ...(style.pocket && { pocket: true }),
    caliperUm: sizing.caliperUm,
    fits: fitsOf(style, values.lengths, options),
  };
}

function insideOf(style: BoxStyle, values: NamedValues): BoxNet['inside'] {
  const [width, depth, height] = style.inside.map((text) => lengthOf(text, values));
  return {
    width: width ?? values.lengths['t'],
    depth: depth ?? width,
    height: height ?? width,
  } as BoxNet['inside'];
}

/** Room, and blank and corners of every piece, as `layNet` lays them; nothing else. */
export function cornersOfNet(
  style: BoxStyle,
  sizing: Sizing,
): Pick<BoxNet, 'inside'> & { readonly pieces: readonly PieceCorners[] } {
  const values = nameValues(style, sizing);
  return {
    inside: insideOf(style, values),
    pieces: Object.values(piecesOf(style, sizing.options)).map((piece) => layCorners(piece, values)),
  };
}

/** A box as it stands: its pieces, or what they make where they are glued to one another. */
export const asItStands = ({ pieces, whole }: BoxNet): readonly PieceNet[] =>
  whole === undefined ? pieces : [whole];
