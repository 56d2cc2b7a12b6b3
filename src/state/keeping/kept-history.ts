import { z } from 'zod';
import { TABLES } from '../../../shared/tables';
import type { Shelf } from '../shelf';
import { type History, NO_HISTORY, nextStep } from './history';
import { type Step, takeStep } from './steps';

const text = z.string().max(200);
const plain = z.json().optional();
const at = z.union([z.tuple([text]), z.tuple([text, text])]);
const key = { table: z.enum(TABLES), id: text };
const change = z.discriminatedUnion('do', [
  z.strictObject({
    ...key,
    do: z.literal('edit'),
    fields: z.array(z.strictObject({ at, before: plain, after: plain })),
  }),
  z.strictObject({ ...key, do: z.enum(['add', 'remove']), row: z.looseObject({ id: text }) }),
]);
const step = z.strictObject({ label: text, at: z.number(), changes: z.array(change) });
const history = z.strictObject({ done: z.array(step), undone: z.array(step) });

/** How many steps outlive a reload, the largest step that does, and how many letters one and all of them may hold. Source: our own. */
const STEPS_KEPT = 50;
const ROWS_IN_A_KEPT_STEP = 20;
const LETTERS_IN_A_KEPT_STEP = 20_000;
const LETTERS_KEPT = 100_000;

/** What of an undo list outlives a reload: the newest steps of either way, as far as they are small. It is written with every save. */
export function smallHistory({ done, undone }: History): History {
  return { done: smallSteps(done), undone: smallSteps(undone) };
}

function smallSteps(steps: readonly Step[]): readonly Step[] {
  let letters = 0;
  const newest = steps.slice(-STEPS_KEPT).toReversed();
  const tooLarge = newest.findIndex((step) => {
    if (step.changes.length > ROWS_IN_A_KEPT_STEP) return true;
    const own = lettersOf(step);
    letters += own;
    return own > LETTERS_IN_A_KEPT_STEP || letters > LETTERS_KEPT;
  });
  return (tooLarge < 0 ? newest : newest.slice(0, tooLarge)).toReversed();
}

const counted = new WeakMap<Step, number>();

/** Letters of a step as it is kept; counted once, since steps never change. */
function lettersOf(step: Step): number {
  const known = counted.get(step);
  if (known !== undefined) return known;
  const letters = JSON.stringify(step).length;
  counted.set(step, letters);
  return letters;
}

/** The undo list that an earlier visit left, if it fits what is on the shelf now; else none. Rows in it are read again when they are used. */
export function readHistory(raw: unknown, shelf: Shelf): History {
  const reading = history.safeParse(raw);
  if (!reading.success) return NO_HISTORY;
  const kept = reading.data as unknown as History;
  const fits = (way: 'undo' | 'redo') => {
    const next: Step | null = nextStep(kept, way);
    return !next || takeStep(shelf, next, way, new Date(0).toISOString()) !== null;
  };
  return fits('undo') && fits('redo') ? kept : NO_HISTORY;
}
