import { keyText } from '../shelf';
import type { FieldChange } from './field-changes';
import { sameValue } from './same-value';
import type { RowChange, Step } from './steps';

export interface History {
  /** Oldest first; the last one is undone next. */
  readonly done: readonly Step[];
  /** The last one is redone next. */
  readonly undone: readonly Step[];
}

export const NO_HISTORY: History = { done: [], undone: [] };
const MOST_STEPS = 200;
/** Keystrokes in one field closer than this are one step. Source: our own. */
const TYPING_PAUSE_MS = 1000;

/** A step that a keystroke made is no older than this once the keystroke has been heard. Source: our own. */
const AT_ONCE_MS = 100;

/** The history after a new step. Typing on in the field of the last step lengthens that step; what was undone is forgotten. */
export function recordStep(history: History, step: Step): History {
  const last = history.done.at(-1);
  if (!last || history.undone.length > 0 || !goesOn(last, step))
    return { done: [...history.done, step].slice(-MOST_STEPS), undone: [] };
  const joined = joinSteps(last, step);
  const earlier = history.done.slice(0, -1);
  return { done: joined ? [...earlier, joined] : earlier, undone: [] };
}

function goesOn(last: Step, next: Step): boolean {
  const pause = next.at - last.at;
  return (
    last.label === next.label && pause >= 0 && pause <= TYPING_PAUSE_MS && placeOf(last) === placeOf(next)
  );
}

/** Row and fields of a step that edits one row; a text of its own for any other step, so that nothing is joined to it. */
function placeOf(step: Step): string | symbol {
  const [change, ...others] = step.changes;
  if (change?.do !== 'edit' || others.length > 0) return Symbol(step.label);
  return [keyText(change), ...change.fields.map(({ at }) => at.join('.')).sort()].join(' ');
}

/** Two steps in the same fields as one; null if together they change nothing. */
function joinSteps(first: Step, second: Step): Step | null {
  const [a, b] = [first.changes[0], second.changes[0]];
  if (a?.do !== 'edit' || b?.do !== 'edit') return second;
  const fields = a.fields.flatMap((field): FieldChange[] => {
    const later = b.fields.find(({ at }) => at.join('.') === field.at.join('.'));
    const after = later ? later.after : field.after;
    return sameValue(field.before, after) ? [] : [{ ...field, after }];
  });
  const change: RowChange = { ...a, fields };
  return fields.length > 0 ? { ...second, changes: [change] } : null;
}

/**
 * The history after a field's own undo, at `now`, put its text back: if that made a step, the typing before it and this step together change
 * nothing, and are no steps of the maker’s.
 */
export function forgetTypedBack({ done, undone }: History, now: number): History {
  const last = done.at(-1);
  if (!last || now - last.at > AT_ONCE_MS) return { done, undone };
  const place = placeOf(last);
  for (let from = done.length - 1; from >= 0; from--) {
    const first = done[from];
    if (!first || first.label !== last.label || placeOf(first) !== place) break;
    if (from < done.length - 1 && joinSteps(first, last) === null)
      return { done: done.slice(0, from), undone };
  }
  return { done, undone };
}

/** The history once its last step was undone (or redone): the step moves to the other list. */
export function moveStep({ done, undone }: History, way: 'undo' | 'redo'): History {
  if (way === 'undo') return { done: done.slice(0, -1), undone: [...undone, ...done.slice(-1)] };
  return { done: [...done, ...undone.slice(-1)], undone: undone.slice(0, -1) };
}

/** The history without its next step, which no longer fits. */
export const dropStep = ({ done, undone }: History, way: 'undo' | 'redo'): History =>
  way === 'undo' ? { done: done.slice(0, -1), undone } : { done, undone: undone.slice(0, -1) };

export const nextStep = ({ done, undone }: History, way: 'undo' | 'redo'): Step | null =>
  (way === 'undo' ? done : undone).at(-1) ?? null;

/** The history with one row's changes moved to another id: the row they belong to lives on as a copy. */
export function renameRow(history: History, from: string, id: string): History {
  const rename = (step: Step): Step => ({
    ...step,
    changes: step.changes.map((change) => {
      if (keyText(change) !== from) return change;
      return change.do === 'edit' ? { ...change, id } : { ...change, id, row: { ...change.row, id } };
    }),
  });
  return { done: history.done.map(rename), undone: history.undone.map(rename) };
}
