import { lengthWords } from '../core/draw/strokes/length-text';
import { areaMark, lineMark } from '../core/draw/strokes/marks';
import { setFractions } from '../core/draw/strokes/set-fractions';
import {
  type EventPlan,
  type FirstBox,
  type RunSheet,
  type RunStep,
  STAGE_NAMES,
  sayRunStep,
  timeOfDay,
} from '../core/plan';
import { fileStem } from '../core/rows/text';
import type { Ruler } from '../core/units';
import { type Reason, reason, sayReason, type Wording } from '../core/units/reason';
import { type Block, besideBlocks, keepNext, ruleBlock, space, stackBlocks, textBlock } from './block';
import { longDate } from './long-date';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface RunSheetInput {
  readonly plan: Pick<EventPlan, 'name' | 'date' | 'ordered' | 'making' | 'timetable'>;
  readonly sheet: RunSheet;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  /** For dates; that of the United States if left out. */
  readonly locale?: string;
  /** The reader's language; English if left out. */
  readonly say?: NonNullable<Wording['say']>;
  readonly stamp: PrintStamp;
}

/** The batch on paper: when each stage is done, the first box to measure, and every step with room to tally. */
export function printRunSheet(input: RunSheetInput): PrintDocument {
  const { plan, paper, stamp } = input;
  const title = sayReason(reason('{name}: batch sheet', { name: { text: plan.name } }), wordingOf(input));
  const { widthMm } = columnOf(paper);
  const columns = flowColumns(sheetBlocks(input, widthMm), paper);
  return {
    name: `${fileStem(plan.name, 'event')}-batch-sheet`,
    title,
    pages: pagesOf(columns, paper, { title, code: stamp.code }),
    stamp,
  };
}

const wordingOf = ({ ruler, say }: RunSheetInput): Wording => ({
  length: (length) => lengthWords(length, ruler),
  money: String,
  ...(say && { say }),
});

function sheetBlocks(input: RunSheetInput, widthMm: number): Block[] {
  const { plan, sheet } = input;
  const wording = wordingOf(input);
  const { say = String } = wording;
  const head = (text: string) =>
    keepNext(
      stackBlocks([
        space(5),
        textBlock(say(text), { widthMm, sizeMm: TYPE_MM.heading, bold: true }),
        space(2),
      ]),
    );
  const acts = [...new Set(sheet.steps.map(({ act }) => act))];
  return [
    textBlock(plan.name, { widthMm, sizeMm: TYPE_MM.title, bold: true }),
    space(2.5),
    textBlock(
      sayReason(
        plan.date
          ? reason('{ordered} needed + {spare} spares = {making} to make, for {date}', {
              making: plan.making,
              ordered: plan.ordered,
              spare: plan.making - plan.ordered,
              date: { text: longDate(plan.date, input.locale) },
            })
          : reason('{ordered} needed + {spare} spares = {making} to make', {
              making: plan.making,
              ordered: plan.ordered,
              spare: plan.making - plan.ordered,
            }),
        wording,
      ),
      { widthMm, sizeMm: TYPE_MM.lead },
    ),
    ...(plan.timetable ? [head('When'), ...timetable(plan.timetable, widthMm, say, input.locale)] : []),
    head('Test box first: make one of each, measure it, then make the batch'),
    ...sheet.firsts.map((first) =>
      row(
        lineName(first),
        firstSizes(first).map((size) => sayReason(size, wording)),
        widthMm,
        [],
      ),
    ),
    ...acts.flatMap((act) => [
      head(STAGE_NAMES[act]),
      ...saidAlike(
        sheet.steps.filter((step) => step.act === act),
        wording,
      ).map((alike) => stepRow(alike, wording, widthMm)),
    ]),
  ];
}

function timetable(
  { sittings }: NonNullable<EventPlan['timetable']>,
  widthMm: number,
  say: NonNullable<Wording['say']>,
  locale: string | undefined,
): Block[] {
  const columns = [
    { head: say('Day'), widthMm: 46 },
    { head: say('From'), widthMm: 22, align: 'end' as const },
    { head: say('To'), widthMm: 22, align: 'end' as const },
    { head: say('Stage'), widthMm: widthMm - 90 },
  ];
  return tableBlocks(
    columns,
    sittings.map(({ date, startMinute, minutes, act }) => [
      longDate(date, locale),
      timeOfDay(startMinute, locale),
      timeOfDay(startMinute + minutes, locale),
      say(STAGE_NAMES[act]),
    ]),
  );
}

const firstSizes = ({ blanks, inside, outside }: FirstBox): Reason[] => {
  const size = ({ width, depth, height }: FirstBox['inside']): Reason => ({
    says: '{width} wide, {depth} deep, {height} high',
    facts: { width, depth, height },
  });
  return [
    ...blanks.map(
      ({ label, size: { across, up } }): Reason => ({
        says: blanks.length > 1 ? 'Cut size ({piece}): {across} × {up}' : 'Cut size: {across} × {up}',
        facts: { piece: label, across, up },
      }),
    ),
    { says: 'Inside, closed: {size}', facts: { size: size(inside) } },
    { says: 'Outside, closed: {size}', facts: { size: size(outside) } },
  ];
};

interface AlikeSteps {
  readonly headline: string;
  readonly details: readonly string[];
  readonly steps: readonly RunStep[];
}

/** Steps of one stage that say the same are one row: two colors of a box are scored at one setting. In the order of the first. */
function saidAlike(steps: readonly RunStep[], wording: Wording): readonly AlikeSteps[] {
  const rows = new Map<string, AlikeSteps>();
  for (const step of steps) {
    const { headline, details } = sayRunStep(step, wording);
    const key = [headline, ...details].join('\n');
    rows.set(key, { headline, details, steps: [...(rows.get(key)?.steps ?? []), step] });
  }
  return [...rows.values()];
}

function stepRow({ headline, details, steps }: AlikeSteps, wording: Wording, widthMm: number): Block {
  return row(
    headline,
    details,
    widthMm,
    steps.map((step) => ({
      line: step.lineId === null ? null : lineName(step),
      of: sayReason(reason('of {count}', { count: step.of }), wording),
    })),
  );
}

const lineName = ({ name, paper }: { readonly name: string; readonly paper: string | null }): string =>
  paper === null ? name : `${name}, ${paper}`;

const GUTTER_MM = 10;
const TALLY_MM = 44;

/** What is counted at a step: the line it is for, and how many. */
interface Tally {
  readonly line: string | null;
  readonly of: string;
}

/** A tick box, what is done, and room for a tally for each line it is counted for. */
function row(
  headline: string,
  details: readonly string[],
  widthMm: number,
  tallies: readonly Tally[],
): Block {
  const column = widthMm - GUTTER_MM - TALLY_MM - 4;
  const body = (text: string) => textBlock(setFractions(text), { widthMm: column, sizeMm: TYPE_MM.body });
  const room = ({ of }: Tally): [number, Block][] => [
    [widthMm - TALLY_MM, tallyLine],
    [widthMm - 14, textBlock(of, { widthMm: 14, sizeMm: TYPE_MM.step, bold: true })],
  ];
  const [first, ...others] = tallies;
  const lone = first !== undefined && others.length === 0 ? first : null;
  const said = [...(lone?.line ? [lone.line] : []), ...details];
  return stackBlocks([
    ruleBlock(widthMm),
    space(3),
    besideBlocks(
      [0, tickBox],
      [
        GUTTER_MM,
        stackBlocks([
          textBlock(setFractions(headline), { widthMm: column, sizeMm: TYPE_MM.step, bold: true }),
          ...said.flatMap((detail) => [space(1.4), body(detail)]),
        ]),
      ],
      ...(lone ? room(lone) : []),
    ),
    ...(lone ? [] : tallies).flatMap((tally) => [
      space(1.4),
      besideBlocks([GUTTER_MM, body(tally.line ?? '')], ...room(tally)),
    ]),
    space(3),
  ]);
}

const tallyLine: Block = stackBlocks([
  space(4.5),
  { heightMm: 0, marks: [lineMark('guide', [[0, 0], [TALLY_MM - 16, 0]])] }, // biome-ignore format: one stroke
]);

const tickBox: Block = {
  heightMm: 5,
  marks: [areaMark('edge', [[0, 0], [5, 0], [5, -5], [0, -5]])], // biome-ignore format: one square
};
