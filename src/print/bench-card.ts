import { type BoxCard, JOINING } from '../core/bench';
import { drawFolded } from '../core/draw/folded-drawing';
import { drawNetToFit } from '../core/draw/net/net-drawing';
import type { FaceUp } from '../core/draw/net/net-lines';
import type { GrainWay } from '../core/draw/strokes/grain-arrow';
import { drawLegend, inksIn } from '../core/draw/strokes/legend';
import { setFractions } from '../core/draw/strokes/set-fractions';
import type { BoxNet, PieceNet } from '../core/net/types';
import { fileStem } from '../core/rows/text';
import type { Ruler } from '../core/units';
import {
  type Block,
  besideBlocks,
  drawingBlock,
  keepNext,
  pencilLines,
  ruleBlock,
  space,
  stackBlocks,
  textBlock,
} from './block';
import { cardHead } from './card-head';
import { linkBlock } from './code-block';
import { compactColumns } from './compact-card';
import { type DressingsOfBox, dressingBlocks } from './dressing-block';
import { insideBlocks } from './look-steps';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import {
  LEAST_NET_SHARE,
  type PaperName,
  type PrintDocument,
  type PrintStamp,
  TYPE_MM,
} from './print-document';
import { BARS_MM, barsAcross, barsUp, TRUE_PRINTER } from './scale-bars';
import { BETWEEN_MM, rowsOfSteps } from './step-rows';

export interface BenchCardInput {
  readonly recipeName: string;
  readonly styleName: string;
  readonly inside: BoxNet['inside'];
  readonly cards: readonly BoxCard[];
  readonly faceUp: FaceUp;
  /** Which way the grain runs in the card as it lies, piece by piece the same; null where it does not matter. */
  readonly grain: GrainWay | null;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  readonly notes: string;
  /** What goes onto the box, told on the card of its last piece; nothing if left out. */
  readonly dressed?: DressingsOfBox;
  /** Care with what goes inside, told on the card of its last piece. */
  readonly cautions?: readonly string[];
  /** The address that brings the recipe, told on the card of its last piece; null where it is too long. No place for it if left out. */
  readonly link?: string | null;
  /** What the box is made of, by name. */
  readonly paperName?: string | null;
  /** Compact: the fewest pages. Roomy: a step to a block, large pictures and numbers. Compact if left out. */
  readonly edition?: 'compact' | 'roomy';
  readonly stamp: PrintStamp;
}

const CLOSED_MM = { widthMm: 44, heightMm: 30 }; // room for the finished piece, beside the title
const PICTURE_SHARE = 0.42; // of the column's height, at most

/**
 * What lies beside the trimmer: the net with its numbers, then step by step what hands do. In the roomy edition each piece starts a page of
 * its own, and so does joining them.
 */
export function printBenchCard(input: BenchCardInput): PrintDocument {
  const title = `${input.recipeName}: step card`;
  const foot = { title, code: input.stamp.code };
  const columns =
    input.edition === 'roomy'
      ? input.cards.flatMap((card) => flowColumns(cardBlocks(card, input), input.paper))
      : compactColumns(input);
  return {
    name: `${fileStem(input.recipeName, 'box')}-step-card`,
    title,
    pages: pagesOf(columns, input.paper, foot),
    stamp: input.stamp,
  };
}

function cardBlocks(card: BoxCard, input: BenchCardInput): Block[] {
  const { piece, joins } = card;
  const { ruler } = input;
  const { widthMm } = columnOf(input.paper);
  const words = (text: string, sizeMm: number, bold = false) =>
    textBlock(setFractions(text), { widthMm: widthMm - CLOSED_MM.widthMm - BETWEEN_MM, sizeMm, bold });
  const { title, lines } = cardHead(card, input);
  const head = stackBlocks([
    words(title, TYPE_MM.title, true),
    space(1),
    ...lines.flatMap((line) => [space(1.5), words(line, TYPE_MM.lead)]),
    ...(joins ? [space(2), words(JOINING, TYPE_MM.lead, true)] : []),
  ]);
  const closed = drawingBlock(drawFolded(piece, { from: 'standing', space: CLOSED_MM }), CLOSED_MM.widthMm);
  return [
    besideBlocks([0, head], [widthMm - CLOSED_MM.widthMm, closed]),
    space(6),
    ...(joins ? [] : netBlocks(piece, input)),
    ...(input.notes.trim() === ''
      ? []
      : [space(3), textBlock(input.notes, { widthMm, sizeMm: TYPE_MM.body })]),
    space(4),
    ...rowsOfSteps(card, input),
    ...(input.dressed && card === input.cards.at(-1)
      ? [
          ruleBlock(widthMm),
          space(4),
          ...dressingBlocks(input.dressed, ruler, widthMm),
          ...insideBlocks(input.dressed, ruler, widthMm),
        ]
      : []),
    ...(card === input.cards.at(-1) ? careBlocks(input.cautions ?? [], widthMm) : []),
    ...(input.link !== undefined && card === input.cards.at(-1)
      ? [space(4), linkBlock(input.link, widthMm), space(4)]
      : []),
    ruleBlock(widthMm),
    notesAndBars(widthMm),
  ];
}

/** The flat piece with its numbers, and what its lines mean. */
function netBlocks(piece: PieceNet, { ruler, faceUp, grain, paper }: BenchCardInput): Block[] {
  const { widthMm, heightMm } = columnOf(paper);
  const net = drawNetToFit(
    piece,
    { widthMm, heightMm: heightMm * PICTURE_SHARE },
    { ruler, textMm: TYPE_MM.number, faceUp, grain, least: LEAST_NET_SHARE },
  );
  return [
    keepNext(drawingBlock(net, widthMm)),
    space(4),
    drawLegend(inksIn([net]), widthMm, TYPE_MM.small),
    space(3),
    textBlock(
      `All numbers in ${UNIT_WORDS[ruler.unit]}. The picture is not at true size: go by the numbers.`,
      { widthMm, sizeMm: TYPE_MM.small },
    ),
  ];
}

/** The usual words of care for what is given. */
function careBlocks(cautions: readonly string[], widthMm: number): Block[] {
  if (cautions.length === 0) return [];
  return [
    keepNext(textBlock('Take care', { widthMm, sizeMm: TYPE_MM.heading, bold: true })),
    space(2),
    ...cautions.flatMap((caution) => [textBlock(caution, { widthMm, sizeMm: TYPE_MM.body }), space(2)]),
  ];
}

const UNIT_WORDS = { in: 'inches', mm: 'millimeters' } as const;

/** Room for a pencil, and bars both ways that show whether the printer printed true; never torn apart. */
function notesAndBars(widthMm: number): Block {
  const heightMm = 118; // the 4 in bar up the page, its words, and air above
  const bottom: readonly [number, number] = [0, -heightMm];
  const columnMm = widthMm - BARS_MM - BETWEEN_MM;
  const notes = stackBlocks([
    space(6),
    textBlock('Notes', { widthMm: columnMm, sizeMm: TYPE_MM.body, bold: true }),
    pencilLines(columnMm, 66),
    space(6),
    textBlock('Printed true? Each bar is as long as it says, if printed at 100 %.', {
      widthMm: columnMm,
      sizeMm: TYPE_MM.small,
    }),
  ]);
  return {
    heightMm,
    marks: [
      ...notes.marks,
      ...barsAcross(bottom, TRUE_PRINTER),
      ...barsUp([widthMm, bottom[1] + 2], TRUE_PRINTER),
    ],
  };
}
