import { lengthWords } from '../core/draw/length-text';
import { areaMark, lineMark } from '../core/draw/marks';
import { setFractions } from '../core/draw/set-fractions';
import {
  type EventPlan,
  type FirstBox,
  type RunSheet,
  type RunStep,
  STAGE_NAMES,
  sayRunStep,
} from '../core/plan';
import type { Ruler } from '../core/units';
import { type Block, besideBlocks, keepNext, ruleBlock, space, stackBlocks, textBlock } from './block';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { fileStem, type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface RunSheetInput {
  readonly plan: Pick<EventPlan, 'name' | 'date' | 'ordered' | 'making' | 'timetable'>;
  readonly sheet: RunSheet;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  readonly stamp: PrintStamp;
}

/** The batch on paper: when each stage is done, the first box to measure, and every step with room to tally. */
export function printRunSheet(input: RunSheetInput): PrintDocument {
  const { plan, paper, stamp } = input;
  const title = `${plan.name}: run sheet`;
  const { widthMm } = columnOf(paper);
  const columns = flowColumns(sheetBlocks(input, widthMm), paper);
  return {
    name: `${fileStem(plan.name, 'event')}-run-sheet`,
    title,
    pages: pagesOf(columns, paper, { title, code: stamp.code }),
    stamp,
  };
}

function sheetBlocks({ plan, sheet, ruler }: RunSheetInput, widthMm: number): Block[] {
  const length = (of: FirstBox['inside']['width']) => lengthWords(of, ruler);
  const head = (text: string) =>
    keepNext(
      stackBlocks([space(5), textBlock(text, { widthMm, sizeMm: TYPE_MM.heading, bold: true }), space(2)]),
    );
  const acts = [...new Set(sheet.steps.map(({ act }) => act))];
  return [
    textBlock(plan.name, { widthMm, sizeMm: TYPE_MM.title, bold: true }),
    space(2.5),
    textBlock(
      `${plan.making} to make, ${plan.ordered} of them ordered.${plan.date ? ` For ${plan.date}.` : ''}`,
      { widthMm, sizeMm: TYPE_MM.lead },
    ),
    ...(plan.timetable ? [head('When'), ...timetable(plan.timetable, widthMm)] : []),
    head('First box of each line: make one, measure it, then the batch'),
    ...sheet.firsts.map((first) =>
      row(
        `${first.name}${first.paper === null ? '' : `, ${first.paper}`}`,
        firstSizes(first, length),
        widthMm,
        null,
      ),
    ),
    ...acts.flatMap((act) => [
      head(STAGE_NAMES[act]),
      ...sheet.steps.filter((step) => step.act === act).map((step) => stepRow(step, length, widthMm)),
    ]),
  ];
}

function timetable({ sittings }: NonNullable<EventPlan['timetable']>, widthMm: number): Block[] {
  const clock = (minute: number) => `${Math.floor(minute / 60)}:${`${minute % 60}`.padStart(2, '0')}`;
  const columns = [
    { head: 'Day', widthMm: 34 },
    { head: 'From', widthMm: 22, align: 'end' as const },
    { head: 'To', widthMm: 22, align: 'end' as const },
    { head: 'Stage', widthMm: widthMm - 78 },
  ];
  return tableBlocks(
    columns,
    sittings.map(({ date, startMinute, minutes, act }) => [
      date,
      clock(startMinute),
      clock(startMinute + minutes),
      STAGE_NAMES[act],
    ]),
  );
}

const firstSizes = (
  { blanks, inside, outside }: FirstBox,
  length: (of: FirstBox['inside']['width']) => string,
): string[] => {
  const size = ({ width, depth, height }: FirstBox['inside']) =>
    `${length(width)} wide, ${length(depth)} deep, ${length(height)} high`;
  return [
    ...blanks.map(
      ({ label, size: blank }) =>
        `Blank${blanks.length > 1 ? ` (${label})` : ''}: ${length(blank.across)} × ${length(blank.up)}`,
    ),
    `Inside, closed: ${size(inside)}`,
    `Outside, closed: ${size(outside)}`,
  ];
};

function stepRow(step: RunStep, length: (of: FirstBox['inside']['width']) => string, widthMm: number): Block {
  const { headline, details } = sayRunStep(step, { length, money: String });
  const line = step.lineId === null ? [] : [`${step.name}${step.paper === null ? '' : `, ${step.paper}`}`];
  return row(headline, [...line, ...details], widthMm, step.of);
}

const GUTTER_MM = 10;
const TALLY_MM = 44;

/** A tick box, what is done, and room for a tally where it is counted. */
function row(headline: string, details: readonly string[], widthMm: number, of: number | null): Block {
  const column = widthMm - GUTTER_MM - TALLY_MM - 4;
  const tally = stackBlocks([
    space(6),
    { heightMm: 0, marks: [lineMark('guide', [[0, 0], [TALLY_MM - 16, 0]])] }, // biome-ignore format: one stroke
  ]);
  return stackBlocks([
    ruleBlock(widthMm),
    space(3),
    besideBlocks(
      [0, tickBox],
      [
        GUTTER_MM,
        stackBlocks([
          textBlock(setFractions(headline), { widthMm: column, sizeMm: TYPE_MM.step, bold: true }),
          ...details.flatMap((detail) => [
            space(1.4),
            textBlock(setFractions(detail), { widthMm: column, sizeMm: TYPE_MM.body }),
          ]),
        ]),
      ],
      ...(of === null
        ? []
        : [
            [widthMm - TALLY_MM, tally] as const,
            [widthMm - 14, textBlock(`of ${of}`, { widthMm: 14, sizeMm: TYPE_MM.step, bold: true })] as const,
          ]),
    ),
    space(3.5),
  ]);
}

const tickBox: Block = {
  heightMm: 5,
  marks: [areaMark('edge', [[0, 0], [5, 0], [5, -5], [0, -5]])], // biome-ignore format: one square
};
