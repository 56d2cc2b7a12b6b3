import { type At, type Box, boxRing } from '../../plane';
import type { Ruler } from '../../units';
import { type Ticks, ticks, toMm } from '../../units/ticks';
import type { Layout, SheetPaper } from '../../yield/types';
import { drawCutNumbers } from '../net/cut-numbers';
import { sizeWords } from '../strokes/length-text';
import { areaMark, frameMarks, type TextMark } from '../strokes/marks';
import { LESSER } from '../strokes/running-marks';
import { fitsInside, patchBehind, type StackLine, stackText } from '../strokes/text-stack';
import type { Drawing, Mark } from '../strokes/types';
import { type CardPiece, cutOrder, squaredSheet } from './cut-order';
import { drawWayOf } from './way-of-sheet';

/** A kind of part as the drawing names it: `mark` is the letter on it, the same on every sheet. */
export interface NamedPart {
  readonly id: string;
  readonly mark: string;
  readonly name: string;
}

export interface LayoutDrawingOptions {
  readonly parts: readonly NamedPart[];
  readonly ruler: Ruler;
  /** Paper millimeters for one millimeter of sheet. */
  readonly scale: number;
  /** Type size of the parts' letters, mm on paper. */
  readonly textMm: number;
  readonly kerf?: Ticks;
}

export interface LayoutDrawing extends Drawing {
  readonly origin: At;
  readonly scale: number;
}

/** One sheet and how it is cut: lettered parts with their sizes, offcuts, squaring strips, and the cuts numbered in order. */
function drawLayout(layout: Layout, paper: SheetPaper, options: LayoutDrawingOptions): LayoutDrawing {
  const { scale, textMm, ruler, parts } = options;
  const box = ({ x, y, across, up }: CardPiece) => {
    const [left, bottom] = [toMm(x) * scale, toMm(y) * scale];
    return { left, bottom, right: left + toMm(across) * scale, top: bottom + toMm(up) * scale };
  };
  const whole = { x: ticks(0), y: ticks(0), across: paper.across, up: paper.up };
  const named = new Map(parts.map((part) => [part.id, part]));
  const labelled = [
    ...layout.offcuts.map((piece) => ({ piece, lines: offcutLines(piece, ruler, textMm) })),
    ...layout.parts.map((piece) => ({
      piece,
      lines: partLines(named.get(piece.part), piece, ruler, textMm),
    })),
  ];
  const labels: TextMark[] = labelled.flatMap(({ piece, lines }) => labelPiece(boxRing(box(piece)), lines));
  const steps = cutOrder(layout, paper, options.kerf ?? ticks(0));
  const marks: Mark[] = [
    areaMark('paper', boxRing(box(whole))),
    areaMark('edge', boxRing(box(whole))),
    ...squaringStrips(paper).map((strip) => areaMark('waste', boxRing(box(strip)))),
    ...layout.offcuts.map((piece) => areaMark('offcut', boxRing(inset(box(piece))))),
    ...layout.parts.map((piece) => areaMark('part', boxRing(box(piece)), `part ${piece.part}`)),
    ...drawCutNumbers(steps, labels, { box, ruler, sizeMm: LESSER * textMm }),
    ...labels.map((label) => areaMark('paper', patchBehind(label))),
    ...labels,
    ...drawWayOf(paper, [box(whole).right, box(whole).top], textMm),
  ];
  const size = sizeWords(paper.across, paper.up, ruler);
  const title = `Sheet ${size}`;
  const description =
    `A sheet ${size}: ${countParts(layout, named)}, ${steps.length} cuts` +
    `${layout.offcuts.length > 0 ? `, offcuts ${layout.offcuts.map(({ across, up }) => sizeWords(across, up, ruler)).join(' and ')}` : ''}.`;
  return { ...frameMarks(marks, title, description), scale };
}

/** The same at the largest scale that fits a space on paper. */
export function drawLayoutToFit(
  layout: Layout,
  paper: SheetPaper,
  space: { readonly widthMm: number; readonly heightMm: number },
  options: Omit<LayoutDrawingOptions, 'scale'>,
): LayoutDrawing {
  const [across, up] = [toMm(paper.across), toMm(paper.up)];
  let scale = Math.min(space.widthMm / across, space.heightMm / up);
  let drawing = drawLayout(layout, paper, { ...options, scale });
  // What stands outside the sheet (grain, margin) hardly depends on the scale: a few rounds settle it.
  for (let round = 0; round < 6; round++) {
    if (drawing.widthMm <= space.widthMm && drawing.heightMm <= space.heightMm) break;
    scale = Math.min(
      scale * 0.999,
      (space.widthMm - (drawing.widthMm - across * scale)) / across,
      (space.heightMm - (drawing.heightMm - up * scale)) / up,
    );
    drawing = drawLayout(layout, paper, { ...options, scale });
  }
  return drawing;
}

/** An offcut's own line stands clear of the cuts around it. */
const inset = ({ left, bottom, right, top }: Box): Box => {
  const by = Math.min(1, (right - left) / 4, (top - bottom) / 4);
  return { left: left + by, bottom: bottom + by, right: right - by, top: top - by };
};

function partLines(part: NamedPart | undefined, piece: CardPiece, ruler: Ruler, textMm: number): StackLine[] {
  return [
    { text: part?.mark ?? '', sizeMm: textMm, bold: true },
    { text: part?.name ?? '', sizeMm: LESSER * textMm },
    { text: sizeWords(piece.across, piece.up, ruler), sizeMm: LESSER * textMm },
  ].filter(({ text }) => text !== '');
}

const offcutLines = (piece: CardPiece, ruler: Ruler, textMm: number): StackLine[] => [
  { text: 'offcut', sizeMm: LESSER * textMm },
  { text: sizeWords(piece.across, piece.up, ruler), sizeMm: LESSER * textMm },
];

/** As many of the lines as fit, level before turned; the first line alone before nothing. */
function labelPiece(ring: readonly At[], lines: readonly StackLine[]): TextMark[] {
  const [[left, bottom], , [right, top]] = ring as [At, At, At, At];
  const middle: At = [(left + right) / 2, (bottom + top) / 2];
  const shorter = lines.length > 2 ? [lines, [lines[0]!, lines[2]!], [lines[0]!]] : [lines, lines.slice(-1)];
  const tries = shorter.flatMap((some) => [stackText(some, middle), stackText(some, middle, 90)]);
  return tries.find((labels) => labels.every((label) => fitsInside(label, [ring], 0.8))) ?? [];
}

function squaringStrips(paper: SheetPaper): CardPiece[] {
  const { x, y, across, up } = squaredSheet(paper);
  const { left, right, near, far } = paper.squaring;
  const zero = ticks(0);
  return [
    { x: zero, y: zero, across: left, up: paper.up },
    { x: ticks(x + across), y: zero, across: right, up: paper.up },
    { x, y: zero, across, up: near },
    { x, y: ticks(y + up), across, up: far },
  ].filter((strip) => strip.across > 0 && strip.up > 0);
}

function countParts(layout: Layout, named: ReadonlyMap<string, NamedPart>): string {
  const counts = new Map<string, number>();
  for (const { part } of layout.parts) counts.set(part, (counts.get(part) ?? 0) + 1);
  return (
    [...counts].map(([id, count]) => `${count} × ${named.get(id)?.name ?? id}`).join(', ') || 'no pieces'
  );
}
