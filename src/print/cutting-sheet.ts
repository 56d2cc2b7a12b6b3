import { CAUTIONS } from '../core/bench';
import { type CutStep, cutOrder, squaredSheet } from '../core/draw/cut-order';
import { lengthWords, sizeWords } from '../core/draw/length-text';
import { drawLayoutToFit, type NamedPart } from '../core/draw/sheet-drawing';
import type { EventPlan, PlannedPaper } from '../core/plan';
import { type Ruler, type Ticks, ticks } from '../core/units';
import type { Layout } from '../core/yield';
import { type Block, drawingBlock, keepNext, space, textBlock } from './block';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { fileStem, type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface CuttingSheetsInput {
  readonly plan: Pick<EventPlan, 'name' | 'papers'>;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  /** Card lost to each cut; 0 for a blade. */
  readonly kerf?: Ticks;
  readonly stamp: PrintStamp;
}

const PICTURE_MM = 112; // the most height a layout takes, so that its cuts stand below it

/** How every sheet of an event is cut: per paper its parts, then each layout with its cuts in order. */
export function printCuttingSheets(input: CuttingSheetsInput): PrintDocument {
  const { plan, paper, stamp } = input;
  const title = `${plan.name}: cutting sheets`;
  const columns = plan.papers.flatMap((planned) => flowColumns(paperBlocks(planned, input), paper));
  return {
    name: `${fileStem(plan.name, 'event')}-cutting-sheets`,
    title,
    pages: pagesOf(columns, paper, { title, code: stamp.code }),
    stamp,
  };
}

/** Parts of one paper with the letters that stand on them. */
export const letterParts = (planned: Pick<PlannedPaper, 'parts'>): NamedPart[] =>
  planned.parts.map(({ id, name }, place) => ({ id, name, mark: partLetter(place) }));

const partLetter = (place: number) =>
  String.fromCharCode(65 + (place % 26)) + (place < 26 ? '' : `${1 + Math.floor(place / 26)}`);

function paperBlocks(planned: PlannedPaper, input: CuttingSheetsInput): Block[] {
  const { sheet, plan, name } = planned;
  const { ruler, paper } = input;
  const { widthMm } = columnOf(paper);
  const parts = letterParts(planned);
  const words = (text: string, sizeMm: number = TYPE_MM.body, bold = false) =>
    textBlock(text, { widthMm, sizeMm, bold });
  return [
    words(name, TYPE_MM.title, true),
    space(2.5),
    words(
      `${counted(plan.sheets, 'sheet')} of ${sizeWords(sheet.across, sheet.up, ruler)}. ${boundWords(plan.sheets, plan.lowerBound, plan.proven)}`,
      TYPE_MM.lead,
    ),
    ...(plan.unplaced.length > 0
      ? [space(2), words(unplacedWords(plan.unplaced, parts), TYPE_MM.lead, true)]
      : []),
    space(3),
    ...partsTable(planned, parts, ruler, widthMm),
    space(2),
    words(CAUTIONS.blade, TYPE_MM.small),
    ...plan.layouts.flatMap((layout, i) => layoutBlocks(layout, i + 1, planned, parts, input)),
  ];
}

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;

function boundWords(sheets: number, lowerBound: number, proven: boolean): string {
  if (proven) return 'No plan uses fewer.';
  return `At most ${sheets - lowerBound} fewer could exist.`;
}

const unplacedWords = (unplaced: readonly string[], parts: readonly NamedPart[]) =>
  `Too large for this sheet, and not cut from it: ${unplaced.map((id) => parts.find((part) => part.id === id)?.name ?? id).join(', ')}.`;

function partsTable(
  { parts, plan }: PlannedPaper,
  named: readonly NamedPart[],
  ruler: Ruler,
  widthMm: number,
): Block[] {
  const made = (id: string) =>
    plan.layouts.reduce(
      (sum, { sheets, parts: placed }) => sum + sheets * placed.filter(({ part }) => part === id).length,
      0,
    );
  return tableBlocks(
    [
      { head: '', widthMm: 12, bold: true },
      { head: 'part', widthMm: widthMm - 12 - 60 - 2 * 28 },
      { head: 'size', widthMm: 60 },
      { head: 'wanted', widthMm: 28, align: 'end' },
      { head: 'cut', widthMm: 28, align: 'end' },
    ],
    parts.map((part, i) => [
      named[i]?.mark ?? '',
      part.name,
      sizeWords(part.across, part.up, ruler),
      `${part.count}`,
      `${made(part.id)}`,
    ]),
  );
}

function layoutBlocks(
  layout: Layout,
  number: number,
  { sheet, plan }: PlannedPaper,
  parts: readonly NamedPart[],
  { ruler, paper, kerf = ticks(0) }: CuttingSheetsInput,
): Block[] {
  const { widthMm } = columnOf(paper);
  const drawing = drawLayoutToFit(
    layout,
    sheet,
    { widthMm, heightMm: PICTURE_MM },
    { parts, ruler, textMm: TYPE_MM.number, kerf },
  );
  const head = `${plan.layouts.length > 1 ? `Layout ${number}: cut ` : 'Cut '}${counted(layout.sheets, 'sheet')} so`;
  const steps = cutOrder(layout, sheet, kerf);
  const squared = squaredSheet(sheet);
  const trims = squared.across !== sheet.across || squared.up !== sheet.up;
  return [
    space(7),
    keepNext(textBlock(head, { widthMm, sizeMm: TYPE_MM.heading, bold: true })),
    space(3),
    keepNext(drawingBlock(drawing, widthMm)),
    space(3),
    ...(trims
      ? [
          keepNext(textBlock(squaringWords(sheet.squaring, ruler), { widthMm, sizeMm: TYPE_MM.body })),
          space(2),
        ]
      : []),
    ...tableBlocks(
      [
        { head: 'cut', widthMm: 14, bold: true },
        { head: 'set the fence to', widthMm: 36, bold: true },
        { head: 'and cut', widthMm: 70 },
        { head: 'which frees', widthMm: widthMm - 120 },
      ],
      steps.map((step) => [
        `${step.number}`,
        lengthWords(step.fence, ruler),
        cutWords(step),
        freedWords(step, parts, ruler),
      ]),
    ),
  ];
}

const cutWords = ({ way }: CutStep) =>
  way === 'upright' ? 'upright, measured from the left' : 'level, measured from the near edge';

const freedWords = ({ frees }: CutStep, parts: readonly NamedPart[], ruler: Ruler) =>
  frees
    .map((free) =>
      free.kind === 'part'
        ? (parts.find(({ id }) => id === free.part)?.mark ?? free.part)
        : `offcut ${sizeWords(free.piece.across, free.piece.up, ruler)}`,
    )
    .join(', ');

function squaringWords(squaring: PlannedPaper['sheet']['squaring'], ruler: Ruler): string {
  const sides = (['left', 'right', 'near', 'far'] as const)
    .filter((side) => squaring[side] > 0)
    .map((side) => `${lengthWords(squaring[side], ruler)} off the ${side} edge`);
  return `First square the sheet: ${sides.join(', ')}.`;
}
