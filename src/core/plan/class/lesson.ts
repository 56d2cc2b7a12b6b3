import type { FavorEvent } from '../../rows';
import { HAND_TIMES, type HandAct } from '../../rows/hand-times';
import type { EventCost } from '../buying/cost';
import { type AskingPrice, askPrice } from '../event/asking';
import type { KitList } from '../event/kit-list';
import type { PlannedGlue, PlannedLine } from '../event/types';
import { sumActs, timesActs } from '../run/hand-acts';
import type { EventHours } from '../run/hours';
import { type BringItem, listToBring } from './bring';
import { lessonOf } from './usual-lesson';

/** One part of a class; minutes are counted from midnight. */
export interface LessonStep {
  readonly kind: 'welcome' | 'act' | 'wait' | 'break' | 'tidy';
  /** What everyone does; null for the rest. */
  readonly act: HandAct | null;
  readonly startMinute: number;
  readonly minutes: number;
  /** How often a learner does it, and how long it takes them; the teacher shows it on one box of each line first. */
  readonly times: number;
  readonly showSeconds: number;
  readonly workSeconds: number;
}

type Untimed = Omit<LessonStep, 'startMinute'>;

export interface LessonPlan {
  readonly steps: readonly LessonStep[];
  readonly minutes: number;
  /** Null where no hourly rate is known: materials and the teacher's work before the class, by the kit. */
  readonly perKit: AskingPrice | null;
  /** The same with the room and the hours of the class, by the seat. */
  readonly perSeat: AskingPrice | null;
  readonly bring: readonly BringItem[];
}

/** How a class runs at the learners' pace, act by act in the order of a batch; its prices; and what to bring. */
export function planLesson(
  event: FavorEvent,
  lines: readonly PlannedLine[],
  kit: KitList,
  cost: EventCost,
  hours: EventHours,
  glue: PlannedGlue | null,
): LessonPlan {
  const lesson = lessonOf(event);
  const oneEach = sumActs(...lines.map(({ acts }) => acts));
  const inKit = sumActs(...lines.map(({ acts, perKit }) => timesActs(acts, perKit ?? 0)));
  const own = event.pace?.seconds ?? [];
  const acts = HAND_TIMES.flatMap(({ act, seconds: usual }): Untimed[] => {
    const times = act === 'set-up' || lesson.ahead.some((one) => one === act) ? 0 : (inKit[act] ?? 0);
    if (times === 0) return [];
    const seconds = own.find((one) => one.act === act)?.seconds ?? usual;
    const showSeconds = (oneEach[act] ?? 0) * seconds;
    const workSeconds = (times * seconds * lesson.learnerPercent) / 100;
    const minutes = Math.ceil((showSeconds + workSeconds) / 60);
    return [{ kind: 'act', act, minutes, times, showSeconds, workSeconds }];
  });
  const steps = inTurn(
    [
      rest('welcome', lesson.welcomeMinutes),
      ...withWaits(withBreak(acts, lesson.breakMinutes), glue),
      rest('tidy', lesson.tidyMinutes),
    ].filter(({ minutes }) => minutes > 0),
    lesson.startMinute,
  );
  const minutes = steps.reduce((sum, step) => sum + step.minutes, 0);
  const price = (materials: number, seconds: number) =>
    event.asking ? askPrice(materials, seconds, kit.kits, event.asking) : null;
  const materials = cost.using.totalMinor;
  return {
    steps,
    minutes,
    perKit: price(materials, hours.totalSeconds),
    perSeat: price(materials + lesson.roomMinor, hours.totalSeconds + minutes * 60),
    bring: listToBring(kit, lesson, acts),
  };
}

const rest = (kind: 'welcome' | 'wait' | 'break' | 'tidy', minutes: number): Untimed => ({
  kind,
  act: null,
  minutes,
  times: 0,
  showSeconds: 0,
  workSeconds: 0,
});

/** A break after the act that ends nearest the middle of the work. */
function withBreak(acts: readonly Untimed[], minutes: number): readonly Untimed[] {
  const all = acts.reduce((sum, act) => sum + act.minutes, 0);
  let [after, nearest, done] = [0, Number.POSITIVE_INFINITY, 0];
  for (const [at, act] of acts.entries()) {
    done += act.minutes;
    const off = Math.abs(2 * done - all);
    if (off < nearest && at < acts.length - 1) [after, nearest] = [at + 1, off];
  }
  return after === 0 ? acts : [...acts.slice(0, after), rest('break', minutes), ...acts.slice(after)];
}

/** Glue is pressed before the next act, and dries after the bottoms; a break counts toward either. */
function withWaits(steps: readonly Untimed[], glue: PlannedGlue | null): readonly Untimed[] {
  if (!glue) return steps;
  return steps.flatMap((step, at) => {
    const next = steps[at + 1];
    const needed =
      step.act === 'glue' ? glue.pressMinutes : step.act === 'close-bottom' ? glue.dryMinutes : 0;
    const more = Math.max(0, needed - (next?.kind === 'break' ? next.minutes : 0));
    return next && more > 0 ? [step, rest('wait', more)] : [step];
  });
}

function inTurn(steps: readonly Untimed[], start: number): readonly LessonStep[] {
  let at = start;
  return steps.map((step) => {
    const startMinute = at;
    at += step.minutes;
    return { ...step, startMinute };
  });
}
