import { UPRIGHT } from '../core/draw/net/lying-piece';
import { linesOfNet } from '../core/draw/net/net-lines';
import { type NestedSheet, netOfNest } from '../core/draw/sheet/nested-net';
import { centredText, lineMark } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import { type BoxNet, dxfOf, svgOf } from '../core/net';
import { fileStem } from '../core/rows/text';
import { toMm } from '../core/units';
import type { PrintDocument, PrintStamp } from './print-document';

const asBox = ({ net, piece, nest, sheet }: NestedSheet): BoxNet => ({
  ...net,
  pieces: [netOfNest(piece, nest.parts, sheet)],
});

/** A nested sheet as SVG for a cutting machine: true size, layers cut, score, slit and glue, inside face up. */
export const nestedSvg = (input: NestedSheet): string => svgOf(asBox(input), input.title);

/** The same as DXF, release 12. */
export const nestedDxf = (input: NestedSheet): string => dxfOf(asBox(input));

const NUMBER_MM = 4;

/** One page as large as the sheet itself, every outline and score at true size, to be cut by scissors or knife. */
export function printNestedSheet(input: NestedSheet & { readonly stamp: PrintStamp }): PrintDocument {
  const { title, piece, nest, sheet, stamp } = input;
  const at = ({ x, y }: { readonly x: number; readonly y: number }) => [toMm(x), toMm(y)] as const;
  const lines = linesOfNet(netOfNest(piece, nest.parts, sheet), UPRIGHT);
  const marks: Mark[] = [
    ...lines.map(({ ink, a, b }) => lineMark(ink, [at(a), at(b)])),
    ...nest.parts.map(({ x, y, across, up }, number) =>
      centredText(`${number + 1}`, at({ x: x + across / 2, y: y + up / 2 }), NUMBER_MM, { bold: true }),
    ),
  ];
  const page = { widthMm: toMm(sheet.across), heightMm: toMm(sheet.up), title, description: title, marks };
  return { name: fileStem(title, 'nested-sheet'), title, pages: [page], stamp };
}
