import { lengthWords } from '../core/draw/length-text';
import { CAP_HEIGHT } from '../core/draw/letters';
import { areaMark, textMark } from '../core/draw/marks';
import { setFractions } from '../core/draw/set-fractions';
import {
  type EventPlan,
  type OrderSum,
  perPiece,
  printMoney,
  type ShoppingRow,
  sayReason,
  type Wording,
} from '../core/plan';
import type { Ruler } from '../core/units';
import {
  type Block,
  besideBlocks,
  keepNext,
  pencilLines,
  ruleBlock,
  space,
  stackBlocks,
  textBlock,
} from './block';
import { csvOf } from './csv';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { fileStem, type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';

export interface ShoppingListInput {
  readonly plan: Pick<EventPlan, 'name' | 'date' | 'ordered' | 'making' | 'shopping' | 'cost' | 'lines'>;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  /** How the reader writes money; a language tag. */
  readonly locale: string;
  readonly stamp: PrintStamp;
}

/** What to buy, with a box to tick, the working of every figure, and what it comes to. */
export function printShoppingList(input: ShoppingListInput): PrintDocument {
  const { plan, paper, stamp } = input;
  const title = `${plan.name}: shopping list`;
  const { widthMm } = columnOf(paper);
  const columns = flowColumns(listBlocks(input, widthMm), paper, (left) =>
    left < 40 ? null : notes(left, widthMm),
  );
  return {
    name: `${fileStem(plan.name, 'event')}-shopping-list`,
    title,
    pages: pagesOf(columns, paper, { title, code: stamp.code }),
    stamp,
  };
}

const notes = (leftMm: number, widthMm: number): Block =>
  stackBlocks([
    space(7),
    textBlock('Notes', { widthMm, sizeMm: TYPE_MM.body, bold: true }),
    pencilLines(widthMm, Math.min(leftMm - 16, 60)),
  ]);

function listBlocks({ plan, ruler, locale }: ShoppingListInput, widthMm: number): Block[] {
  const money = (minor: number) => printMoney(minor, plan.cost.currency, locale);
  const wording: Wording = { money, length: (length) => lengthWords(length, ruler) };
  const words = (text: string, sizeMm: number = TYPE_MM.body, bold = false) =>
    textBlock(text, { widthMm, sizeMm, bold });
  const { till, using, favors, unpriced } = plan.cost;
  const toBuy = plan.shopping.filter(({ short }) => short > 0);
  const inHand = plan.shopping.filter(({ short }) => short === 0);
  return [
    words(plan.name, TYPE_MM.title, true),
    space(2.5),
    words(
      `${plan.ordered} favors and ${plan.making - plan.ordered} spare: ${plan.making} to make.${plan.date ? ` For ${plan.date}.` : ''}`,
      TYPE_MM.lead,
    ),
    space(6),
    ...section('To buy', toBuy, wording, widthMm),
    ...section('In the cupboard already', inHand, wording, widthMm),
    keepNext(ruleBlock(widthMm)),
    space(4),
    words(
      `To pay: ${money(till.totalMinor)}, ${money(perPiece(till.totalMinor, favors))} a favor (${favors} favors).`,
      TYPE_MM.heading,
      true,
    ),
    space(2.5),
    ...(till.totalMinor === till.subtotalMinor ? [] : [words(sayTill(till, money)), space(2)]),
    words(
      `Of it, and of what is in the cupboard, the favors use up ${money(using.totalMinor)}, ${money(using.perFavorMinor)} a favor.`,
    ),
    ...(unpriced.length > 0
      ? [
          space(2),
          words(`No price is known for ${unpriced.length} of the rows: they are left out of both sums.`),
        ]
      : []),
  ];
}

/** From the goods to what is paid. */
export function sayTill(till: OrderSum, money: Wording['money']): string {
  const steps = [
    `goods ${money(till.subtotalMinor)}`,
    ...(till.discountMinor > 0 ? [`${till.discountPercent} % discount −${money(till.discountMinor)}`] : []),
    ...(till.shippingMinor > 0 ? [`shipping ${money(till.shippingMinor)}`] : []),
    ...(till.taxMinor > 0 ? [`tax ${money(till.taxMinor)}`] : []),
  ];
  return `That is ${steps.join(', ')}.`;
}

const section = (head: string, rows: readonly ShoppingRow[], wording: Wording, widthMm: number): Block[] =>
  rows.length === 0
    ? []
    : [
        keepNext(textBlock(head, { widthMm, sizeMm: TYPE_MM.heading, bold: true })),
        space(3),
        ...rows.flatMap((row) => [
          stackBlocks([ruleBlock(widthMm), space(3.5), rowBlock(row, wording, widthMm), space(4)]),
        ]),
        space(3),
      ];

const GUTTER_MM = 10;
const PRICE_MM = 34;

function rowBlock(row: ShoppingRow, wording: Wording, widthMm: number): Block {
  const column = widthMm - GUTTER_MM - PRICE_MM;
  const body = (text: string) => textBlock(text, { widthMm: column, sizeMm: TYPE_MM.small });
  const price = row.short === 0 ? '' : row.priceMinor === null ? 'no price' : wording.money(row.priceMinor);
  return besideBlocks(
    [0, tickBox],
    [
      GUTTER_MM,
      stackBlocks([
        textBlock(setFractions(row.name), { widthMm: column, sizeMm: TYPE_MM.step, bold: true }),
        space(1.8),
        textBlock(buyWords(row, wording), { widthMm: column, sizeMm: TYPE_MM.body }),
        ...row.why.flatMap((reason) => [space(1.2), body(sayReason(reason, wording))]),
      ]),
    ],
    [widthMm, endText(price)],
  );
}

/** `3 packs of 10 sheets at 4.50, 1 pack of 25 sheets at 9.00`; or what is needed when nothing is bought. */
export function buyWords({ packs, short, need, unit }: ShoppingRow, { money }: Wording): string {
  const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;
  if (short === 0) return `${counted(need, unit)}, all in hand`;
  if (packs.length === 0) return `${counted(short, unit)}, however they are sold`;
  return packs
    .map(({ units, priceMinor, count, free }) => {
      const what =
        units === 1 ? counted(count, unit) : `${counted(count, 'pack')} of ${counted(units, unit)}`;
      return `${what} at ${money(priceMinor)}${free > 0 ? `, ${free} of them free` : ''}`;
    })
    .join(', ');
}

/** A price ends where the column ends. */
const endText = (text: string): Block => ({
  heightMm: TYPE_MM.step,
  marks: [textMark(text, [0, -CAP_HEIGHT * TYPE_MM.step], TYPE_MM.step, { anchor: 'end', bold: true })],
});

const tickBox: Block = {
  heightMm: 5,
  marks: [areaMark('edge', [[0, 0], [5, 0], [5, -5], [0, -5]])], // biome-ignore format: one square
};

/** The same list for a spreadsheet: counts as numbers, money in whole minor units and in words. */
export function shoppingCsv({ plan, locale }: Pick<ShoppingListInput, 'plan' | 'locale'>): string {
  const money = (minor: number) => printMoney(minor, plan.cost.currency, locale);
  const wording: Wording = { money, length: (length) => `${length}` };
  return csvOf([
    [
      'item',
      'kind',
      'unit',
      'need',
      'on hand',
      'short',
      'buy',
      'left over',
      'left over, worth',
      'price',
      `price (${plan.cost.currency}, minor units)`,
    ],
    ...plan.shopping.map((row) => [
      row.name,
      row.kind,
      row.unit,
      row.need,
      row.onHand,
      row.short,
      buyWords(row, wording),
      row.leftOver,
      row.leftOverMinor === null ? '' : money(row.leftOverMinor),
      row.priceMinor === null ? '' : money(row.priceMinor),
      row.priceMinor ?? '',
    ]),
  ]);
}
