import type { PieceNet } from '../../net/types';
import { type At, boxRing } from '../../plane';
import type { Ruler } from '../../units';
import { toMm } from '../../units/ticks';
import type { Nest, SheetPaper } from '../../yield';
import { UPRIGHT } from '../net/lying-piece';
import { linesOfNet } from '../net/net-lines';
import { sizeWords } from '../strokes/length-text';
import { areaMark, centredText, frameMarks, lineMark } from '../strokes/marks';
import type { Mark } from '../strokes/types';
import { netOfNest } from './nested-net';
import type { LayoutDrawing } from './sheet-drawing';
import { drawWayOf } from './way-of-sheet';

export interface NestDrawingOptions {
  readonly piece: PieceNet;
  readonly ruler: Ruler;
  readonly textMm: number;
}

/** One sheet with its outlines laid into one another, at the largest scale that fits; numbered, with their scores. */
export function drawNest(
  nest: Nest,
  paper: SheetPaper,
  space: { readonly widthMm: number; readonly heightMm: number },
  { piece, ruler, textMm }: NestDrawingOptions,
): LayoutDrawing {
  const outside = 2 + (paper.grain === 'none' ? 0 : 3.5 * textMm);
  const scale = Math.max(
    0.01,
    Math.min((space.widthMm - outside) / toMm(paper.across), (space.heightMm - outside) / toMm(paper.up)),
  );
  const at = ({ x, y }: { readonly x: number; readonly y: number }): At => [toMm(x) * scale, toMm(y) * scale];
  const [right, top] = at({ x: paper.across, y: paper.up });
  const sheet = boxRing({ left: 0, bottom: 0, right, top });
  const lines = linesOfNet(netOfNest(piece, nest.parts, paper), UPRIGHT);
  const marks: Mark[] = [
    areaMark('paper', sheet),
    areaMark('edge', sheet),
    ...lines.map(({ ink, a, b }) => lineMark(ink, [at(a), at(b)])),
    ...nest.parts.map(({ x, y, across, up }, number) =>
      centredText(`${number + 1}`, at({ x: x + across / 2, y: y + up / 2 }), textMm, { bold: true }),
    ),
    ...drawWayOf(paper, [right, top], textMm),
  ];
  const size = sizeWords(paper.across, paper.up, ruler);
  const title = `Nested sheet ${size}`;
  const description = `A sheet ${size} with ${nest.parts.length} × ${piece.label}, nested. Not for a trimmer.`;
  return { ...frameMarks(marks, title, description), scale };
}
