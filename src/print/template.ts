import { clipMarks } from '../core/draw/clip';
import { drawNet, type NetDrawing } from '../core/draw/net/net-drawing';
import type { FaceUp } from '../core/draw/net/net-lines';
import type { GrainWay } from '../core/draw/strokes/grain-arrow';
import { drawLegend, inksIn } from '../core/draw/strokes/legend';
import { sizeWords } from '../core/draw/strokes/length-text';
import { areaMark, lineMark, moveMarks, pointOfArc, textMark } from '../core/draw/strokes/marks';
import type { Drawing, Mark } from '../core/draw/strokes/types';
import type { PieceNet } from '../core/net/types';
import { type At, type Box, boxRing } from '../core/plane';
import { fileStem } from '../core/rows/text';
import type { Ruler } from '../core/units';
import { drawAssemblyMap, MAP_MM } from './assembly-map';
import { textBlock } from './block';
import { type PageColumn, pagesOf } from './page-flow';
import {
  MARGIN_MM,
  PAPER_MM,
  type PaperName,
  type PrintDocument,
  type PrintStamp,
  TYPE_MM,
} from './print-document';
import { BARS_MM, barsAcross, barsUp, type Stretch, TRUE_PRINTER } from './scale-bars';
import { OVERLAP_MM, type Tile, type Tiling, tileDrawing } from './tiling';

/** Chords of one degree leave a 200 mm arc by 0.008 mm. */
const STEP_DEG = 1;

/** Crosses, and where they stand along a shared strip. */
const ARM_MM = 4;
const RING_MM = 2;
const ALONG = [0.12, 0.5, 0.88];

export interface TemplateInput {
  readonly recipeName: string;
  readonly pieces: readonly PieceNet[];
  readonly faceUp: FaceUp;
  readonly grain: GrainWay | null;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  /** What this printer needs to print true, each way of the page as it is printed. */
  readonly stretch?: Stretch;
  readonly stamp: PrintStamp;
  /** Another drawing of each piece in place of its net, at true size, and what the document is then called. */
  readonly instead?: { readonly title: string; readonly draw: (piece: PieceNet) => NetDrawing };
}

const HEAD_MM = 11; // title and what to do, above the net
const FOOT_MM = 6; // page number
const GAP_MM = 3;
const BELOW_MM = 18; // bars, notes and map, below the net

/** The net at true size, over as many pages as it needs: register marks, an assembly map, and scale bars both ways on every page. */
export function printTemplate(input: TemplateInput): PrintDocument {
  const what = input.instead?.title ?? 'template';
  const title = `${input.recipeName}: ${what}`;
  const columns = input.pieces.flatMap((piece) => piecePages(piece, input));
  return {
    name: `${fileStem(input.recipeName, 'box')}-${fileStem(what, 'template')}`,
    title,
    pages: pagesOf(columns, input.paper, { title, code: input.stamp.code }),
    stamp: input.stamp,
  };
}

function piecePages(piece: PieceNet, input: TemplateInput): PageColumn[] {
  const { ruler, faceUp, grain, stretch = TRUE_PRINTER } = input;
  const plain = { ruler, scale: 1, textMm: TYPE_MM.number, faceUp, show: { numbers: false } };
  const net = input.instead?.draw(piece) ?? drawNet(piece, plain);
  const drawn = {
    ...net,
    widthMm: net.widthMm * stretch.across,
    heightMm: net.heightMm * stretch.up,
    marks: stretchMarks(net.marks, stretch),
  };
  const { frame, tiling, sideways } = layOut(drawn, net, input.paper);
  const words = [
    capital(piece.label),
    `card ${sizeWords(piece.blank.across, piece.blank.up, ruler)}`,
    ...(grain ? [`grain ${grain}`] : []),
    `${faceUp} face up`,
  ].join(', ');
  return tiling.tiles.map((tile) => ({
    sideways,
    marks: drawTilePage({ drawn, tile, tiling, frame, words, recipeName: input.recipeName, stretch }),
  }));
}

/** The drawing on the fewer pages of an upright and a sideways grid. */
function layOut(drawn: Drawing, net: Drawing, paper: PaperName) {
  const [upright, sideways] = [false, true].map((turned) => {
    const frame = frameOf(paper, turned, net);
    return { sideways: turned, frame, tiling: tileDrawing(drawn.widthMm, drawn.heightMm, frame.net) };
  }) as [Layout, Layout];
  return sideways.tiling.tiles.length < upright.tiling.tiles.length ? sideways : upright;
}

interface Layout {
  readonly sideways: boolean;
  readonly frame: Frame;
  readonly tiling: Tiling;
}

/** How many pages the template of a piece takes on a true printer. */
export function templatePages(piece: PieceNet, paper: PaperName, ruler: Ruler): number {
  const net = drawNet(piece, { ruler, scale: 1, textMm: TYPE_MM.number, show: { numbers: false } });
  return layOut(net, net, paper).tiling.tiles.length;
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** Where things stand on a template page, from the top left corner of its column. */
interface Frame {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly legend: ReturnType<typeof drawLegend>;
  /** Room for the net. */
  readonly net: { readonly widthMm: number; readonly heightMm: number };
}

function frameOf(paper: PaperName, sideways: boolean, net: Drawing): Frame {
  const sheet = PAPER_MM[paper];
  const [across, up] = sideways ? [sheet.heightMm, sheet.widthMm] : [sheet.widthMm, sheet.heightMm];
  const [widthMm, heightMm] = [across - 2 * MARGIN_MM, up - 2 * MARGIN_MM];
  const legend = drawLegend(inksIn([net]), widthMm, TYPE_MM.small);
  const below = GAP_MM + BELOW_MM + GAP_MM + legend.heightMm + FOOT_MM;
  return {
    widthMm,
    heightMm,
    legend,
    net: { widthMm: widthMm - BARS_MM - GAP_MM, heightMm: heightMm - HEAD_MM - below },
  };
}

interface TilePage {
  readonly drawn: Drawing;
  readonly tile: Tile;
  readonly tiling: Tiling;
  readonly frame: Frame;
  readonly words: string;
  readonly recipeName: string;
  readonly stretch: Stretch;
}

function drawTilePage({ drawn, tile, tiling, frame, words, recipeName, stretch }: TilePage): Mark[] {
  const { legend, net, widthMm } = frame;
  const top = -HEAD_MM;
  const bottom = top - net.heightMm;
  const toPage = (marks: readonly Mark[]) => moveMarks(marks, -tile.window.left, top - tile.window.top);
  const many = tiling.tiles.length > 1;
  const head = many ? `${recipeName}, page ${tile.name} of ${tiling.rows} × ${tiling.columns}` : recipeName;
  return [
    ...textBlock(head, { widthMm, sizeMm: TYPE_MM.heading, bold: true }).marks,
    textMark(words, [widthMm, -0.73 * TYPE_MM.heading], TYPE_MM.body, { anchor: 'end' }),
    ...(many ? [areaMark('join', boxRing(windowBox(frame, top)))] : []),
    ...toPage(clipMarks(drawn.marks, tile.window)),
    ...(many ? toPage(drawRegister(tiling, tile)) : []),
    ...barsAcross([0, bottom - GAP_MM - BARS_MM], stretch),
    ...barsUp([widthMm, bottom], stretch),
    ...notes(many).map((line, i) => textMark(line, [108, bottom - GAP_MM - 2.3 - i * 4.4], TYPE_MM.small)),
    ...(many
      ? moveMarks(drawAssemblyMap(tiling, tile, drawn), widthMm - MAP_MM.widthMm, bottom - GAP_MM - BELOW_MM)
      : []),
    ...moveMarks(legend.marks, 0, bottom - 2 * GAP_MM - BELOW_MM),
  ];
}

const windowBox = ({ net }: Frame, top: number): Box => ({
  left: 0,
  right: net.widthMm,
  top,
  bottom: top - net.heightMm,
});

const notes = (many: boolean) => [
  'Print at 100%, not “fit”.',
  'Measure one bar each way.',
  'If it is off, don’t cut by this page.',
  ...(many ? ['Line up the crosses, then tape.'] : []),
];

/** Crosses in the strips that a page shares with its neighbors, at the same places of the drawing on both. */
function drawRegister({ columns, rows }: Tiling, { row, column, window }: Tile): Mark[] {
  const { left, right, bottom, top } = window;
  const half = OVERLAP_MM / 2;
  const upright = [...(column > 0 ? [left + half] : []), ...(column < columns - 1 ? [right - half] : [])];
  const level = [...(row > 0 ? [top - half] : []), ...(row < rows - 1 ? [bottom + half] : [])];
  const at = (from: number, to: number) => ALONG.map((share) => from + share * (to - from));
  return [
    ...upright.flatMap((x) => at(bottom, top).map((y): At => [x, y])),
    ...level.flatMap((y) => at(left, right).map((x): At => [x, y])),
  ].flatMap(drawCross);
}

const drawCross = ([x, y]: At): Mark[] => [
  lineMark('guide', [[x - ARM_MM, y], [x + ARM_MM, y]], `register ${x.toFixed(3)} ${y.toFixed(3)}`), // biome-ignore format: one stroke
  lineMark('guide', [[x, y - ARM_MM], [x, y + ARM_MM]]), // biome-ignore format: one stroke
  { kind: 'arc', ink: 'guide', centre: [x, y], radius: RING_MM, fromDeg: 0, sweepDeg: 360 },
];

/** A drawing made longer or shorter each way by what the printer was measured to be off. Words keep their size. */
function stretchMarks(marks: readonly Mark[], { across, up }: Stretch): Mark[] {
  if (across === 1 && up === 1) return [...marks];
  const move = ([x, y]: At): At => [x * across, y * up];
  return marks.map((mark) => stretchMark(mark, move));
}

function stretchMark(mark: Mark, move: (point: At) => At): Mark {
  switch (mark.kind) {
    case 'line':
      return { ...mark, points: mark.points.map(move) };
    case 'area':
      return { ...mark, ring: mark.ring.map(move), holes: (mark.holes ?? []).map((hole) => hole.map(move)) };
    case 'text':
      return { ...mark, at: move(mark.at) };
    case 'arc': {
      // An arc stretched unevenly is no arc any more.
      const { centre, radius, fromDeg, sweepDeg, ink, key } = mark;
      const steps = Math.ceil(Math.abs(sweepDeg) / STEP_DEG);
      const points = Array.from({ length: steps + 1 }, (_, i) =>
        move(pointOfArc(centre, radius, fromDeg + (i * sweepDeg) / steps)),
      );
      return { kind: 'line', ink, points, ...(key === undefined ? {} : { key }) };
    }
  }
}
