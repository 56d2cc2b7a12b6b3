import { CAUTIONS } from '../core/bench';
import { drawCutStep } from '../core/draw/sheet/cut-step-drawing';
import { drawLayoutToFit, type NamedPart } from '../core/draw/sheet/sheet-drawing';
import { lengthWords, sizeWords } from '../core/draw/strokes/length-text';
import { demandOf, type EventPlan, type PlannedPaper } from '../core/plan';
import { fileStem } from '../core/rows/text';
import { type Ruler, ticks } from '../core/units';
import { type CutSequence, type CutStep, type CuttingTool, type Layout, sequenceCuts } from '../core/yield';
import { type Block, besideBlocks, drawingBlock, keepNext, space, stackBlocks, textBlock } from './block';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface CuttingSheetsInput {
  readonly plan: Pick<EventPlan, 'name' | 'papers'>;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  /** What the sheets are cut with; a ruler and a knife if not said. */
  readonly tool?: CuttingTool;
  readonly stamp: PrintStamp;
}

const BY_HAND: CuttingTool = { longestCut: null, kerf: ticks(0), stack: 1, stages: 'free' };
const STEP_MM = { across: 58, up: 44, between: 6, words: 10 } as const; // a picture of one cut; three stand side by side
const MOST_PICTURES = 24; // more cuts than that are told in the table alone
const PICTURE_MM = 94; // the most height a layout takes, so that its cuts stand below it

/** How every sheet of an event is cut: per paper its parts, then each layout with its cuts in order. */
export function printCuttingSheets(input: CuttingSheetsInput): PrintDocument {
  const { plan, paper, stamp } = input;
  const title = `${plan.name}: cutting plan`;
  const columns = plan.papers.flatMap((planned) => flowColumns(paperBlocks(planned, input), paper));
  return {
    name: `${fileStem(plan.name, 'event')}-cutting-plan`,
    title,
    pages: pagesOf(columns, paper, { title, code: stamp.code }),
    stamp,
  };
}

/** What is cut from one paper, each demand with the letter that stands on it and the names of all that it is cut for. */
export const letterParts = ({ parts, demand }: Pick<PlannedPaper, 'parts' | 'demand'>): NamedPart[] =>
  demand.map(({ id }, place) => {
    const names = parts.filter((part) => demandOf(part, demand) === place).map(({ name }) => name);
    return { id, name: [...new Set(names)].join(', '), mark: partLetter(place) };
  });

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
  if (proven) return 'The fewest possible.';
  return `Within ${sheets - lowerBound} of the fewest possible.`;
}

const unplacedWords = (unplaced: readonly string[], parts: readonly NamedPart[]) =>
  `Too large for this sheet, and not cut from it: ${unplaced.map((id) => parts.find((part) => part.id === id)?.name ?? id).join(', ')}.`;

function partsTable(
  { demand, plan }: PlannedPaper,
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
    demand.map((part, i) => [
      named[i]?.mark ?? '',
      named[i]?.name ?? '',
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
  { ruler, paper, tool = BY_HAND }: CuttingSheetsInput,
): Block[] {
  const { widthMm } = columnOf(paper);
  const drawing = drawLayoutToFit(
    layout,
    sheet,
    { widthMm, heightMm: PICTURE_MM },
    { parts, ruler, textMm: TYPE_MM.number, kerf: tool.kerf },
  );
  const head = `${plan.layouts.length > 1 ? `Layout ${number}: cut ` : 'Cut '}${counted(layout.sheets, 'sheet')} like this`;
  const sequence = sequenceCuts(layout, sheet, tool);
  return [
    space(7),
    keepNext(textBlock(head, { widthMm, sizeMm: TYPE_MM.heading, bold: true })),
    space(3),
    keepNext(drawingBlock(drawing, widthMm)),
    space(3),
    keepNext(textBlock(paceWords(sequence), { widthMm, sizeMm: TYPE_MM.body })),
    space(3),
    ...tableBlocks(
      [
        { head: 'cut', widthMm: 14, bold: true },
        { head: 'set the fence to', widthMm: 36, bold: true },
        { head: 'first', widthMm: 38 },
        { head: 'between fence and blade', widthMm: 52 },
        { head: 'past the blade', widthMm: widthMm - 140 },
      ],
      sequence.steps.map((step, at) => [
        cutName(sequence, at),
        lengthWords(step.fence, ruler),
        step.turn ? 'turn a quarter' : '',
        pieceWords(step.keep, parts, ruler),
        step.why === 'square' ? 'squaring strip' : pieceWords(step.other, parts, ruler),
      ]),
    ),
    ...(sequence.steps.length > MOST_PICTURES ? [] : stepPictures(sequence, sheet, parts, ruler)),
  ];
}

/** `a`, `b` for squaring, then `1`, `2` as the cuts are numbered on the drawing. */
export function cutName({ steps }: CutSequence, at: number): string {
  const squares = steps.filter(({ why }) => why === 'square').length;
  return at < squares ? String.fromCharCode(97 + at) : `${at - squares + 1}`;
}

function paceWords({ steps, stack, rounds, strokes, fences, turns }: CutSequence): string {
  const stacked =
    stack > 1
      ? ` (${counted(rounds, 'round')} of ${stack} sheets, ${counted(steps.length, 'cut')} each)`
      : '';
  return `${counted(strokes, 'cut')} in total${stacked}, ${counted(fences.length, 'fence setting')}, ${counted(turns, 'quarter turn')} per round.`;
}

const pieceWords = (piece: CutStep['keep'], parts: readonly NamedPart[], ruler: Ruler): string => {
  if (piece.is === 'piece') return `${sizeWords(piece.across, piece.up, ruler)}, cut again`;
  const mark = parts.find(({ id }) => id === piece.part)?.mark;
  return mark ?? `offcut ${sizeWords(piece.across, piece.up, ruler)}`;
};

/** Every cut as a small picture, three in a row, the fence along the kept edge. */
function stepPictures(
  sequence: CutSequence,
  sheet: PlannedPaper['sheet'],
  parts: readonly NamedPart[],
  ruler: Ruler,
): Block[] {
  const { across, up, between, words } = STEP_MM;
  const pictures = sequence.steps.map((step, at) => {
    const room = { widthMm: across, heightMm: up };
    const drawing = drawCutStep(sequence, at, sheet, room, { parts, ruler, textMm: TYPE_MM.small });
    const head = `${cutName(sequence, at)}. ${step.turn ? 'Turn, then ' : ''}${lengthWords(step.fence, ruler)}`;
    return stackBlocks([
      textBlock(head, { widthMm: across, sizeMm: TYPE_MM.body, bold: true }),
      space(words - TYPE_MM.body * 1.4),
      drawingBlock(drawing, across),
    ]);
  });
  return Array.from({ length: Math.ceil(pictures.length / 3) }, (_, row) =>
    stackBlocks([
      space(6),
      besideBlocks(
        ...pictures
          .slice(3 * row, 3 * row + 3)
          .map((picture, at) => [at * (across + between), picture] as const),
      ),
    ]),
  );
}
