import { weightWays } from '../../shared/catalogue';
import { lengthWords } from '../core/draw/strokes/length-text';
import { CAP_HEIGHT } from '../core/draw/strokes/letters';
import { areaMark, textMark } from '../core/draw/strokes/marks';
import { setFractions } from '../core/draw/strokes/set-fractions';
import {
  type EventPlan,
  leftOutOf,
  type OrderSum,
  perPiece,
  printMoney,
  type ShoppingRow,
  sayReason,
  type Wording,
} from '../core/plan';
import { fileStem } from '../core/rows/text';
import type { Ruler } from '../core/units';
import { type Fact, type Reason, reason } from '../core/units/reason';
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

/** What to buy, with a box to tick, the working of every figure, and what it comes to. */
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

/** How the reader of a list writes what it says. */
export const wordingOf = ({
  plan,
  ruler,
  locale,
  say,
}: Pick<ShoppingListInput, 'plan' | 'locale' | 'say'> & { readonly ruler?: Ruler }): Wording => ({
  money: (minor) => printMoney(minor, plan.cost.currency, locale),
  length: (length) => (ruler === undefined ? `${length}` : lengthWords(length, ruler)),
  ...(say && { say }),
});

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
  ];
}

/** Said in place of every sum while a part of the event is missing from the list. */
export const NOT_WHOLE = reason('Part of this event isn’t planned yet, so there is no total.', {});

/** From the goods to what is paid. */
export function whyTill(till: OrderSum): Reason {
  const steps = [
    reason('goods {sum}', { sum: { minor: till.subtotalMinor } }),
    ...(till.discountMinor > 0
      ? [
          reason('{percent} % discount −{sum}', {
            percent: till.discountPercent,
            sum: { minor: till.discountMinor },
          }),
        ]
      : []),
    ...(till.shippingMinor > 0 ? [reason('shipping {sum}', { sum: { minor: till.shippingMinor } })] : []),
    ...(till.taxMinor > 0 ? [reason('tax {sum}', { sum: { minor: till.taxMinor } })] : []),
  ];
  return reason('That is {steps}.', { steps: afterCommas(steps) });
}

const afterCommas = ([first, ...others]: readonly Reason[]): Fact =>
  others.reduce<Fact>((before, next) => ({ says: '{before}, {next}', facts: { before, next } }), first ?? '');

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
          stackBlocks([ruleBlock(widthMm), space(3.5), rowBlock(row, wording, widthMm), space(4)]),
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
        ...row.why.flatMap((reason) => [space(1.2), body(sayReason(reason, wording))]),
      ]),
    ],
    [widthMm, endText(price)],
  );
}

/** What to say at the counter, where one shop counts pounds and another grams or points. */
function askForWeight(weighs: NonNullable<ShoppingRow['weighs']>): Reason {
  const { soldExactly, ...ways } = weightWays(weighs);
  const facts = { ...ways, mm: { text: ways.mm } };
  return soldExactly
    ? reason('Ask for {pounds} lb {grade}: {gsm} g/m², {mm} mm or {points} pt thick.', facts)
    : reason('Ask for about {pounds} lb {grade}: {gsm} g/m², {mm} mm or {points} pt thick.', facts);
}

/** `3 packs of 10 sheets at 4.50, 1 pack of 25 sheets at 9.00`; or what is needed when nothing is bought. */
export function buyWords({ packs, short, need, unit }: ShoppingRow, wording: Wording): string {
  const counted = (count: number) => reason(COUNTED[unit][count === 1 ? 0 : 1], { count });
  const bought = packs.map(({ units, priceMinor, count, free }) => {
    const packed = { count, units: counted(units) };
    const what =
      units === 1
        ? counted(count)
        : reason(count === 1 ? '{count} pack of {units}' : '{count} packs of {units}', packed);
    return reason(free > 0 ? '{what} at {price}, {free} of them free' : '{what} at {price}', {
      what,
      price: { minor: priceMinor },
      free,
    });
  });
  const said = (): Fact => {
    if (short === 0) return reason('{need}, all on hand', { need: counted(need) });
    if (packs.length === 0) return reason('{short}, however they are sold', { short: counted(short) });
    return afterCommas(bought);
  };
  return sayReason({ says: '{bought}', facts: { bought: said() } }, wording);
}

const COUNTED: Readonly<Record<ShoppingRow['unit'], readonly [one: string, many: string]>> = {
  sheet: ['{count} sheet', '{count} sheets'],
  roll: ['{count} roll', '{count} rolls'],
  piece: ['{count} piece', '{count} pieces'],
  bottle: ['{count} bottle', '{count} bottles'],
};

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
