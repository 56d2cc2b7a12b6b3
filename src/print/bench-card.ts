import type { CardStep, CautionCode } from '../core/bench';
import type { GrainWay } from '../core/draw/grain-arrow';
import { drawLegend, inksIn } from '../core/draw/legend';
import { lengthWords, sizeWords } from '../core/draw/length-text';
import { drawNetToFit } from '../core/draw/net-drawing';
import type { FaceUp } from '../core/draw/net-lines';
import type { BoxNet, PieceNet } from '../core/net/types';
import type { Ruler } from '../core/units';
import {
  type Block,
  drawingBlock,
  keepNext,
  pencilLines,
  ruleBlock,
  space,
  stackBlocks,
  textBlock,
} from './block';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { fileStem, type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { cautionWords, stepBlock } from './step-block';

/** The bench card of one piece: its net, and its steps as words. */
export interface PieceCard {
  readonly piece: PieceNet;
  readonly steps: readonly CardStep[];
}

export interface BenchCardInput {
  readonly recipeName: string;
  readonly styleName: string;
  readonly inside: BoxNet['inside'];
  readonly cards: readonly PieceCard[];
  readonly faceUp: FaceUp;
  /** Which way the grain runs in the card as it lies, piece by piece the same; null where it does not matter. */
  readonly grain: GrainWay | null;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  readonly notes: string;
  readonly stamp: PrintStamp;
}

const PICTURE_SHARE = 0.42; // of the column's height, at most

/** What lies beside the trimmer: the net with its numbers, then step by step what hands do. Each piece starts a page of its own. */
export function printBenchCard(input: BenchCardInput): PrintDocument {
  const title = `${input.recipeName}: bench card`;
  const foot = { title: `${title}, ${input.faceUp} face up`, code: input.stamp.code };
  const columns = input.cards.flatMap((card) =>
    flowColumns(cardBlocks(card, input), input.paper, (left) =>
      notesBlock(left, columnOf(input.paper).widthMm),
    ),
  );
  return {
    name: `${fileStem(input.recipeName, 'box')}-bench-card`,
    title,
    pages: pagesOf(columns, input.paper, foot),
    stamp: input.stamp,
  };
}

function cardBlocks({ piece, steps }: PieceCard, input: BenchCardInput): Block[] {
  const { ruler, faceUp, inside, styleName } = input;
  const { widthMm, heightMm } = columnOf(input.paper);
  const name = input.cards.length > 1 ? `${input.recipeName}: ${piece.label}` : input.recipeName;
  const room = [inside.width, inside.depth, inside.height].map((side) =>
    lengthWords(side, ruler).replace(/ (in|mm)$/, ''),
  );
  const net = drawNetToFit(
    piece,
    { widthMm, heightMm: heightMm * PICTURE_SHARE },
    { ruler, textMm: TYPE_MM.number, faceUp, grain: input.grain },
  );
  const legend = drawLegend(inksIn([net]), widthMm, TYPE_MM.small);
  const cautions = cautionWords(steps);
  return [
    textBlock(name, { widthMm, sizeMm: TYPE_MM.title, bold: true }),
    space(2.5),
    textBlock(
      `${styleName}. Inside ${room.join(' × ')} ${ruler.unit}. Card ${sizeWords(piece.blank.across, piece.blank.up, ruler)}.`,
      { widthMm, sizeMm: TYPE_MM.lead },
    ),
    space(2),
    textBlock(faceWords(faceUp), { widthMm, sizeMm: TYPE_MM.lead, bold: true }),
    space(6),
    keepNext(drawingBlock(net, widthMm)),
    space(4),
    legend,
    space(3),
    textBlock(
      `All numbers in ${UNIT_WORDS[ruler.unit]}. The picture is not at true size: go by the numbers.`,
      {
        widthMm,
        sizeMm: TYPE_MM.small,
      },
    ),
    ...(input.notes.trim() === ''
      ? []
      : [space(3), textBlock(input.notes, { widthMm, sizeMm: TYPE_MM.body })]),
    space(4),
    ...steps.map((step, i) => {
      const sayCaution = (code: CautionCode) => cautions(code, i + 1);
      const block = stepBlock(step, i + 1, { widthMm, ruler, sayCaution });
      return stackBlocks([ruleBlock(widthMm), space(4), block, space(4.5)]);
    }),
    ruleBlock(widthMm),
  ];
}

const UNIT_WORDS = { in: 'inches', mm: 'millimetres' } as const;

const faceWords = (faceUp: FaceUp): string =>
  `Score, slit and cut with the ${faceUp} of the card facing up; the picture shows that face.`;

/** Room for a pencil on what is left of the last page. */
function notesBlock(leftMm: number, widthMm: number): Block | null {
  const room = leftMm - 14;
  if (room < 20) return null;
  return stackBlocks([
    space(5),
    textBlock('Notes', { widthMm, sizeMm: TYPE_MM.body, bold: true }),
    pencilLines(widthMm, Math.min(room, 90)),
  ]);
}
