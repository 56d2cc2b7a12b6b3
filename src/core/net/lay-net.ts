import { checkOnce } from '../styles/language/check-style';
import { defaultChoices, piecesOf, WHOLE } from '../styles/language/define';
import type { BoxStyle } from '../styles/language/types';
import { fitsOf } from './lay-fits';
import { layCorners, layPiece, type PieceCorners } from './lay-piece';
import { lengthOf, nameValues, type Sizing } from './name-values';
import type { BoxNet, PieceNet } from './types';

/** A style at these sizes: one flat net a piece of card. Total: sizes that break the style's limits still give a net, and the checks say what is wrong. */
export function layNet(style: BoxStyle, sizing: Sizing): BoxNet {
  checkOnce(style);
  const values = nameValues(style, sizing);
  const options = { ...defaultChoices(style), ...sizing.options };
  const [width, depth, height] = style.inside.map((text) => lengthOf(text, values));
  return {
    styleId: style.id,
    pieces: Object.entries(piecesOf(style, sizing.options)).map(([id, piece]) => layPiece(id, piece, values)),
    ...(style.whole === undefined ? {} : { whole: layPiece(WHOLE, style.whole, values) }),
    values: values.lengths,
    options,
    inside: {
      width: width ?? values.lengths['t'],
      depth: depth ?? width,
      height: height ?? width,
    } as BoxNet['inside'],
    ...(style.pocket && { pocket: true }),
    caliperUm: sizing.caliperUm,
    fits: fitsOf(style, values.lengths, options),
  };
}

/** Blank and corners of every piece of `layNet`, and nothing else. */
export function cornersOfNet(style: BoxStyle, sizing: Sizing): readonly PieceCorners[] {
  const values = nameValues(style, sizing);
  return Object.values(piecesOf(style, sizing.options)).map((piece) => layCorners(piece, values));
}

/** A box as it stands: its pieces, or what they make where they are glued to one another. */
export const asItStands = ({ pieces, whole }: BoxNet): readonly PieceNet[] =>
  whole === undefined ? pieces : [whole];
