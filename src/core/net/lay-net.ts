import { defaultChoices, piecesOf } from '../styles/define';
import type { BoxStyle } from '../styles/types';
import { layPiece } from './lay-piece';
import { lengthOf, nameValues, type Sizing } from './name-values';
import type { BoxNet } from './types';

/** A style at these sizes: one flat net a piece of card. Total: sizes that break the style's limits still give a net, and the checks say what is wrong. */
export function layNet(style: BoxStyle, sizing: Sizing): BoxNet {
  const values = nameValues(style, sizing);
  const [width, depth, height] = style.inside.map((text) => lengthOf(text, values));
  return {
    styleId: style.id,
    pieces: Object.entries(piecesOf(style, sizing.options)).map(([id, piece]) => layPiece(id, piece, values)),
    values: values.lengths,
    options: { ...defaultChoices(style), ...sizing.options },
    inside: {
      width: width ?? values.lengths['t'],
      depth: depth ?? width,
      height: height ?? width,
    } as BoxNet['inside'],
    caliperUm: sizing.caliperUm,
  };
}
