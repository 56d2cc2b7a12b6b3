import type { Dressing } from '../../shared/workbook';
import { drawInsert } from '../core/draw/sheet/insert-drawing';
import { lengthWords, sizeWords } from '../core/draw/strokes/length-text';
import { setFractions } from '../core/draw/strokes/set-fractions';
import { insertCuts, insertPlan, outsideSize, sizePieces, tieLength } from '../core/dress';
import type { BoxNet } from '../core/net/types';
import { markAbove, type Ruler, type Ticks } from '../core/units';
import { type Reason, sayReason } from '../core/units/reason';
import { type Block, drawingBlock, keepNext, space, textBlock } from './block';
import { TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

/** The ways a box is dressed, for its card. */
export interface DressingsOfBox {
  readonly net: BoxNet;
  readonly dressings: readonly Dressing[];
  /** The marks that sizes are cut on. */
  readonly mark: Ticks;
}

/** A line for everything that goes onto the box, one table a dressing: what it is, how large it is cut, how many to a box. */
export function dressingBlocks(
  { net, dressings, mark }: DressingsOfBox,
  ruler: Ruler,
  widthMm: number,
): Block[] {
  const [name, cut, perBox] = DRESSING_HEADS;
  return dressingLists({ net, dressings, mark }, ruler).flatMap(({ head, rows, dressing }) => [
    keepNext(textBlock(head, { widthMm, sizeMm: TYPE_MM.heading, bold: true })),
    space(2),
    ...tableBlocks(
      [
        { head: name, widthMm: widthMm * 0.5, bold: true },
        { head: cut, widthMm: widthMm * 0.34 },
        { head: perBox, widthMm: widthMm * 0.16, align: 'end' },
      ],
      rows,
    ),
    ...cutPictures(net, dressing, mark, ruler, widthMm),
    space(5),
  ]);
}

export const DRESSING_HEADS = ['Decorations', 'Cut', 'Per box'] as const;

interface DressingList {
  readonly head: string;
  readonly dressing: Dressing;
  /** What it is, how large it is cut, how many to a box. */
  readonly rows: readonly string[][];
}

/** Every look that puts something on the box, as a list. */
export const dressingLists = (
  { net, dressings, mark }: DressingsOfBox,
  ruler: Ruler,
): readonly DressingList[] =>
  dressings
    .map((dressing) => ({
      head: `Decorations: ${dressing.name}`,
      dressing,
      rows: rowsOf(net, dressing, mark, ruler),
    }))
    .filter(({ rows }) => rows.length > 0);

/** A picture of everything that has slots, scores or holes, with the numbers they are cut by; and of what lies inside, on its panel. */
export const cutPictures = (
  net: BoxNet,
  dressing: Dressing,
  mark: Ticks,
  ruler: Ruler,
  widthMm: number,
): readonly Block[] =>
  sizePieces(net, dressing, mark).flatMap(({ piece, size }): Block[] => {
    const plan = size && insertPlan(net, piece, size, mark);
    if (!plan) return [];
    const within = { widthMm: Math.min(126, widthMm), heightMm: PICTURE_HIGH_MM };
    const picture = drawInsert(plan, piece.name, ruler, within);
    return [
      space(3),
      keepNext(textBlock(setFractions(piece.name), { widthMm, sizeMm: TYPE_MM.body, bold: true })),
      space(1),
      drawingBlock(picture, widthMm),
    ];
  });

/** With its numbers, so that a few of them share a page. */
const PICTURE_HIGH_MM = 72;

const saysIn =
  (ruler: Ruler) =>
  (cut: Reason): string =>
    sayReason(cut, { length: (of) => lengthWords(of, ruler), money: String }).replace(/\.$/, '');

const rowsOf = (net: BoxNet, dressing: Dressing, mark: Ticks, ruler: Ruler): string[][] => [
  ...sizePieces(net, dressing, mark).map(({ piece, size }) => [
    setFractions(piece.name),
    size
      ? [
          sizeWords(size.across, size.up, ruler),
          ...insertCuts(net, piece, size, mark).map(saysIn(ruler)),
        ].join('. ')
      : 'doesn’t fit',
    `${piece.perBox}`,
  ]),
  ...(dressing.ties ?? []).map((tie) => [
    setFractions(tie.name),
    lengthWords(markAbove(tieLength(outsideSize(net), tie), mark), ruler),
    `${tie.perBox}`,
  ]),
  ...(dressing.counted ?? []).map(({ name, perBox }) => [setFractions(name), '', `${perBox}`]),
];
