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
