import { CAP_HEIGHT } from '../core/draw/strokes/letters';
import { areaMark, textMark } from '../core/draw/strokes/marks';
import { setFractions } from '../core/draw/strokes/set-fractions';
import {
  countReason,
  type EventPlan,
  leftOutOf,
  perPiece,
  type ShoppingRow,
  sayReason,
  type Wording,
} from '../core/plan';
import { fileStem } from '../core/rows/text';
import type { Ruler } from '../core/units';
import { type Reason, reason } from '../core/units/reason';
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
import { longDate } from './long-date';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { askForWeight, buyWords, NOT_WHOLE, whyTill, wordingOf } from './shopping-words';

export interface ShoppingListInput {
  readonly plan: Pick<
    EventPlan,
    'name' | 'date' | 'ordered' | 'making' | 'shopping' | 'cost' | 'lines' | 'findings'
  >;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  /** How the reader writes money; a language tag. */
  readonly locale: string;
  /** The reader's language; English if left out. */
  readonly say?: NonNullable<Wording['say']>;
  readonly stamp: PrintStamp;
}

/** What to buy, with a box to tick, what it comes to, and below it the working of every figure. */
export function printShoppingList(input: ShoppingListInput): PrintDocument {
  const { plan, paper, stamp } = input;
  const title = sayReason(
    { says: '{name}: shopping list', facts: { name: { text: plan.name } } },
    wordingOf(input),
  );
  const { widthMm } = columnOf(paper);
  const columns = flowColumns(listBlocks(input, widthMm), paper, (left) =>
    left < 40 ? null : notes(left, widthMm, input.say),
  );
  return {
    name: `${fileStem(plan.name, 'event')}-shopping-list`,
    title,
    pages: pagesOf(columns, paper, { title, code: stamp.code }),
    stamp,
  };
}

const notes = (leftMm: number, widthMm: number, say: ShoppingListInput['say'] = String): Block =>
  stackBlocks([
    space(7),
    textBlock(say('Notes'), { widthMm, sizeMm: TYPE_MM.body, bold: true }),
    pencilLines(widthMm, Math.min(leftMm - 16, 60)),
  ]);

function listBlocks(input: ShoppingListInput, widthMm: number): Block[] {
  const { plan } = input;
  const wording = wordingOf(input);
  const words = (says: Reason, sizeMm: number = TYPE_MM.body, bold = false) =>
    textBlock(sayReason(says, wording), { widthMm, sizeMm, bold });
  const { till, using, favors, unpriced } = plan.cost;
  const toBuy = plan.shopping.filter(({ short }) => short > 0);
  const inHand = plan.shopping.filter(({ short }) => short === 0);
  const leftOut = leftOutOf(plan);
  const sums = [
    keepNext(ruleBlock(widthMm)),
    space(4),
    words(
      reason('Total: {total}, {each} per favor ({favors} favors).', {
        total: { minor: till.totalMinor },
        each: { minor: perPiece(till.totalMinor, favors) },
        favors,
      }),
      TYPE_MM.heading,
      true,
    ),
    space(2.5),
    ...(till.totalMinor === till.subtotalMinor ? [] : [words(whyTill(till)), space(2)]),
    words(
      reason('Materials used, supplies on hand included: {total}, {each} per favor.', {
        total: { minor: using.totalMinor },
        each: { minor: using.perFavorMinor },
      }),
    ),
    ...(unpriced.length > 0
      ? [
          space(2),
          words(
            reason('{rows} of the rows have no price. Both totals leave them out.', {
              rows: unpriced.length,
            }),
          ),
        ]
      : []),
  ];
  const counts = { ordered: plan.ordered, spare: plan.making - plan.ordered, making: plan.making };
  return [
    textBlock(plan.name, { widthMm, sizeMm: TYPE_MM.title, bold: true }),
    space(2.5),
    words(
      plan.date
        ? reason('{ordered} favors + {spare} spares = {making} to make, for {date}', {
            ...counts,
            date: { text: longDate(plan.date, input.locale) },
          })
        : reason('{ordered} favors + {spare} spares = {making} to make', counts),
      TYPE_MM.lead,
    ),
    space(6),
    ...section('To buy', toBuy, wording, widthMm),
    ...section('On hand', inHand, wording, widthMm),
    ...(leftOut.length > 0
      ? [
          words(NOT_WHOLE, TYPE_MM.heading, true),
          ...leftOut.flatMap((finding) => [
            space(2),
            words(reason('{name}: {why}', { name: { text: finding.about }, why: finding })),
          ]),
        ]
      : sums),
    ...workings([...toBuy, ...inHand], plan.lines, wording, widthMm),
  ];
}

/** How every figure comes about, below the list that goes to the store; the boxes of each line are counted once for all rows. */
function workings(
  rows: readonly ShoppingRow[],
  lines: ShoppingListInput['plan']['lines'],
  wording: Wording,
  widthMm: number,
): Block[] {
  const said = rows.map(({ name, why }) => ({ name, why: why.map((step) => sayReason(step, wording)) }));
  const boxes = lines.map((line) => sayReason(countReason(line), wording));
  const paragraph = (steps: readonly string[]) => steps.map((step) => step.replace(/\.?$/, '.')).join(' ');
  const small = (text: string) => textBlock(setFractions(text), { widthMm, sizeMm: TYPE_MM.small });
  return [
    space(6),
    keepNext(
      textBlock(sayReason(reason('How we got these numbers', {}), wording), {
        widthMm,
        sizeMm: TYPE_MM.body,
        bold: true,
      }),
    ),
    space(2),
    small(paragraph([...new Set(boxes)])),
    ...said.flatMap(({ name, why }) => {
      const own = why.filter((step) => !boxes.includes(step));
      return own.length === 0 ? [] : [space(1.8), small(`${name}: ${paragraph(own)}`)];
    }),
  ];
}

const section = (head: string, rows: readonly ShoppingRow[], wording: Wording, widthMm: number): Block[] =>
  rows.length === 0
    ? []
    : [
        keepNext(
          textBlock(sayReason({ says: head, facts: {} }, wording), {
            widthMm,
            sizeMm: TYPE_MM.heading,
            bold: true,
          }),
        ),
        space(3),
        ...rows.flatMap((row) => [
          stackBlocks([ruleBlock(widthMm), space(3), rowBlock(row, wording, widthMm), space(2.5)]),
        ]),
        space(3),
      ];

const GUTTER_MM = 10;
const PRICE_MM = 34;

function rowBlock(row: ShoppingRow, wording: Wording, widthMm: number): Block {
  const column = widthMm - GUTTER_MM - PRICE_MM;
  const body = (text: string) => textBlock(text, { widthMm: column, sizeMm: TYPE_MM.small });
  const price =
    row.short === 0
      ? ''
      : row.priceMinor === null
        ? sayReason({ says: 'no price', facts: {} }, wording)
        : wording.money(row.priceMinor);
  return besideBlocks(
    [0, tickBox],
    [
      GUTTER_MM,
      stackBlocks([
        textBlock(setFractions(row.name), { widthMm: column, sizeMm: TYPE_MM.step, bold: true }),
        space(1.8),
        textBlock(buyWords(row, wording), { widthMm: column, sizeMm: TYPE_MM.body }),
        ...(row.weighs && row.short > 0
          ? [space(1.2), body(sayReason(askForWeight(row.weighs), wording))]
          : []),
      ]),
    ],
    [widthMm, endText(price)],
  );
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
export function shoppingCsv(input: Pick<ShoppingListInput, 'plan' | 'locale' | 'say'>): string {
  const { plan } = input;
  const wording = wordingOf(input);
  const { money } = wording;
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
    ...leftOutOf(plan).map((finding) => [`${finding.about}: ${sayReason(finding, wording)}`]),
  ]);
}
