import { areaMark, moveMarks } from '../core/draw/strokes/marks';
import { type BringItem, type EventPlan, type LessonPlan, type LessonStep, timeOfDay } from '../core/plan';
import { boxRing } from '../core/plane';
import { fileStem } from '../core/rows/text';
import { type Block, besideBlocks, keepNext, space, textBlock } from './block';
import { longDate } from './long-date';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface LessonInput {
  readonly plan: Pick<EventPlan, 'name' | 'date'>;
  readonly lesson: LessonPlan;
  readonly paper: PaperName;
  /** For dates and times; that of the United States if left out. */
  readonly locale?: string;
  /** A text of ours in the reader's language. */
  readonly say: (template: string) => string;
  readonly stamp: PrintStamp;
}

const REST = { welcome: 'Welcome', wait: 'Let the glue dry', break: 'Break', tidy: 'Tidy up' } as const;

/** What everyone does, as the teacher says it. */
const ACTS: Readonly<Record<NonNullable<LessonStep['act']>, string>> = {
  cut: 'Cut',
  score: 'Score',
  slit: 'Slit and cut away',
  fold: 'Fold and burnish',
  place: 'Place layers',
  glue: 'Tape or glue',
  'close-bottom': 'Close the bottoms',
  tuck: 'Close by tucking',
  fill: 'Fill',
  'tie-bow': 'Tie',
  'set-up': 'Get ready',
};

/** How a class runs, part by part, and what to bring, with boxes to tick. */
export function printLesson({ plan, lesson, paper, locale, say, stamp }: LessonInput): PrintDocument {
  const title = `${plan.name}: lesson plan`;
  const { widthMm } = columnOf(paper);
  const words = (text: string, sizeMm: number, bold = false) => textBlock(text, { widthMm, sizeMm, bold });
  const when = plan.date ? `${longDate(plan.date, locale)}. ` : '';
  const blocks: Block[] = [
    words(plan.name, TYPE_MM.title, true),
    space(2.5),
    words(
      `${when}${Math.floor(lesson.minutes / 60)} h ${lesson.minutes % 60} min in all. The times are an estimate.`,
      TYPE_MM.lead,
    ),
    space(5),
    ...tableBlocks(
      [
        { head: 'From', widthMm: widthMm * 0.14 },
        { head: 'Part', widthMm: widthMm * 0.38, bold: true },
        { head: 'Minutes', widthMm: widthMm * 0.16, align: 'end' },
        { head: 'You show', widthMm: widthMm * 0.16, align: 'end' },
        { head: 'They do', widthMm: widthMm * 0.16, align: 'end' },
      ],
      lesson.steps.map(({ kind, act, startMinute, minutes, times, showSeconds, workSeconds }) => [
        timeOfDay(startMinute, locale),
        kind === 'act' && act ? `${say(ACTS[act])} (${times} each)` : say(REST[kind as keyof typeof REST]),
        `${minutes}`,
        showSeconds === 0 ? '' : `${Math.ceil(showSeconds / 60)}`,
        workSeconds === 0 ? '' : `${Math.ceil(workSeconds / 60)}`,
      ]),
    ),
    space(6),
    keepNext(words('Bring', TYPE_MM.heading, true)),
    space(2),
    ...lesson.bring.map((item) => bringBlock(item, widthMm, say)),
  ];
  return {
    name: `${fileStem(plan.name, 'event')}-lesson`,
    title,
    pages: pagesOf(flowColumns(blocks, paper), paper, { title, code: stamp.code }),
    stamp,
  };
}

const TICK = areaMark('edge', boxRing({ left: 0, right: 4, bottom: -4, top: 0 }));

function bringBlock({ what, count, care }: BringItem, widthMm: number, say: LessonInput['say']): Block {
  const text = `${count} × ${say(what)}${care === null ? '' : `. ${say(care)}`}`;
  const line = textBlock(text, { widthMm: widthMm - 8, sizeMm: TYPE_MM.body });
  const beside = besideBlocks([8, line]);
  return {
    heightMm: Math.max(beside.heightMm, 4) + 2.5,
    marks: [TICK, ...moveMarks(beside.marks, 0, -0.6)],
  };
}
