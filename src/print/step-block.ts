import { CAUTIONS, type CardMark, type CardStep, type CautionCode } from '../core/bench';
import { lengthText } from '../core/draw/strokes/length-text';
import { CAP_HEIGHT, textWidthMm } from '../core/draw/strokes/letters';
import { areaMark, lineMark, textMark } from '../core/draw/strokes/marks';
import { setFractions } from '../core/draw/strokes/set-fractions';
import type { Drawing, Mark } from '../core/draw/strokes/types';
import type { Ruler } from '../core/units';
import { type Block, besideBlocks, drawingBlock, keepNext, space, stackBlocks, textBlock } from './block';
import { TYPE_MM } from './print-document';
import { STEP_PICTURE_MM } from './step-picture';

export interface StepStyle {
  readonly widthMm: number;
  readonly ruler: Ruler;
  /** What to say of a caution: its words where it is first met, a reminder after. */
  readonly sayCaution: (code: CautionCode) => string;
  /** Stands beside the words; null leaves them the whole width. */
  readonly picture: Drawing | null;
}

const GUTTER_MM = 17; // box to tick and number of the step
const BOX_MM = 5.5;
const BESIDE_MM = 6; // between words and picture
const MARK_MM = 7.4; // 21 pt
const HANG_MM = 5; // tips and cautions stand in from their signs

/**
 * One step of the card: a box to tick, its number, what to do, the numbers to find on the tool, tips and cautions, its picture beside them;
 * then its rows, which may run on to the next page.
 */
export function stepBlocks(step: CardStep, number: number, style: StepStyle): Block[] {
  const { widthMm, picture } = style;
  const column = widthMm - GUTTER_MM - (picture ? STEP_PICTURE_MM.widthMm + BESIDE_MM : 0);
  const shown = picture ? drawingBlock(picture, STEP_PICTURE_MM.widthMm) : space(0);
  const head = besideBlocks(
    [0, tickBox(number)],
    [GUTTER_MM, stepWords(step, column, style)],
    [widthMm - STEP_PICTURE_MM.widthMm, shown],
  );
  const rows = step.details.map((detail) =>
    stackBlocks([space(1.8), bodyText(detail, widthMm - GUTTER_MM - HANG_MM, GUTTER_MM + HANG_MM)]),
  );
  return [rows.length > 0 ? keepNext(head) : head, ...rows];
}

/** A step that is only a sentence and a picture, one below the other: two of them stand side by side. */
export function narrowStep(step: CardStep, number: number, style: StepStyle): Block {
  const { widthMm, picture } = style;
  return stackBlocks([
    besideBlocks([0, tickBox(number)], [GUTTER_MM, stepWords(step, widthMm - GUTTER_MM, style)]),
    ...(picture ? [space(3), drawingBlock(picture, widthMm)] : []),
  ]);
}

/** Whether a step can stand in half a page's width: nothing to measure, nothing to list. */
export const isNarrow = ({ kind, marks, details }: CardStep): boolean =>
  (kind === 'close' || kind === 'glue') && marks.length === 0 && details.length === 0;

const bodyText = (text: string, widthMm: number, leftMm: number) =>
  textBlock(setFractions(text), { widthMm, sizeMm: TYPE_MM.body, leftMm });

function stepWords(step: CardStep, widthMm: number, { ruler, sayCaution }: StepStyle): Block {
  const hung = (text: string) => bodyText(text, widthMm - HANG_MM, HANG_MM);
  return stackBlocks([
    textBlock(setFractions(step.headline), { widthMm, sizeMm: TYPE_MM.step, bold: true }),
    ...(step.marks.length > 0 ? [space(3), markRows(step.marks, widthMm, ruler)] : []),
    ...step.tips.flatMap((tip) => [space(2), tipSign(hung(tip))]),
    ...step.cautions.flatMap((code) => [space(2), cautionSign(hung(sayCaution(code)))]),
  ]);
}

/** A card's cautions in full where each is first met; after that the step that has the words. */
export function cautionWords(steps: readonly CardStep[]): (code: CautionCode, stepNumber: number) => string {
  return (code, stepNumber) => {
    const first = steps.findIndex(({ cautions }) => cautions.includes(code)) + 1;
    const words = CAUTIONS[code];
    return first === stepNumber ? words : `${words.split(':')[0]!.split(' burns')[0]}: as in step ${first}.`;
  };
}

function tickBox(number: number): Block {
  const ring = [
    [0, 0],
    [BOX_MM, 0],
    [BOX_MM, -BOX_MM],
    [0, -BOX_MM],
  ] as const;
  const foot = -BOX_MM / 2 - (CAP_HEIGHT * TYPE_MM.number) / 2;
  return {
    heightMm: BOX_MM,
    marks: [
      areaMark('edge', ring),
      textMark(`${number}`, [BOX_MM + 2.2, foot], TYPE_MM.number, { bold: true }),
    ],
  };
}

const NUMBER_MM = CAP_HEIGHT * MARK_MM + 1.5 * TYPE_MM.small; // a number over its other unit

/** Numbers to find on the tool, as big as they are printed anywhere; those measured the same way under one heading. */
function markRows(marks: readonly CardMark[], widthMm: number, ruler: Ruler): Block {
  const groups = new Map<CardMark['reads'], CardMark[]>();
  for (const mark of marks) groups.set(mark.reads, [...(groups.get(mark.reads) ?? []), mark]);
  const texts: Mark[] = [];
  const headMm = CAP_HEIGHT * TYPE_MM.small + 1.8;
  let [left, top] = [0, 0];
  for (const [reads, those] of groups) {
    const numbers = those.map(({ at }) => {
      const { number, below } = lengthText(at, ruler);
      return {
        number,
        below,
        width: Math.max(textWidthMm(number, MARK_MM, true), textWidthMm(below, TYPE_MM.small)),
      };
    });
    const groupMm = Math.max(
      textWidthMm(reads, TYPE_MM.small),
      numbers.reduce((sum, { width }) => sum + width + 7, -7),
    );
    if (left > 0 && left + groupMm > widthMm) [left, top] = [0, top - headMm - NUMBER_MM - 3];
    texts.push(textMark(reads, [left, top - CAP_HEIGHT * TYPE_MM.small], TYPE_MM.small));
    const start = left;
    for (const { number, below, width } of numbers) {
      if (left > start && left + width > widthMm) [left, top] = [start, top - NUMBER_MM - 3];
      texts.push(
        textMark(number, [left, top - headMm - CAP_HEIGHT * MARK_MM], MARK_MM, { bold: true }),
        textMark(below, [left, top - headMm - NUMBER_MM], TYPE_MM.small),
      );
      left += width + 7;
    }
    left = Math.max(left, start + groupMm + 7) + 5;
  }
  return { heightMm: -top + headMm + NUMBER_MM + 0.3 * TYPE_MM.small, marks: texts };
}

/** A tip hangs from a small bar, so that it is not read as a step. */
const tipSign = (block: Block): Block => ({
  ...block,
  marks: [...block.marks, lineMark('cut', [[1.5, 0], [1.5, -block.heightMm + 0.8]])], // biome-ignore format: one stroke
});

/** A caution hangs from a triangle with an exclamation mark. source: the warning triangle of ISO 7010 W001, in outline (from memory). */
const cautionSign = (block: Block): Block => ({
  heightMm: Math.max(block.heightMm, 4),
  marks: [
    ...block.marks,
    areaMark('edge', [[0, -3.6], [3.8, -3.6], [1.9, -0.2]]), // biome-ignore format: one triangle
    lineMark('edge', [[1.9, -1.3], [1.9, -2.5]]), // biome-ignore format: one stroke
    lineMark('edge', [[1.9, -2.85], [1.9, -3.1]]), // biome-ignore format: one stroke
  ],
});
