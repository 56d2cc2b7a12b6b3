import { z } from 'zod';
import { unsigned } from './lengths';
import { MOST_NAMED } from './refusals';
import { cleanLine, cleanNote, isSeen } from './text';

export const id = z.string().regex(/^[a-z0-9-]{1,64}$/);
export const words = z.string().overwrite(cleanLine).max(200);
export const name = z
  .string()
  .overwrite(cleanLine)
  .min(1)
  .max(200)
  .refine((line) => line === '' || isSeen(line), { error: 'empty' });
export const note = z.string().overwrite(cleanNote).max(4000);
/** A whole number, both bounds allowed; minus zero is zero. */
export const whole = (least: number, most: number) => z.int().min(least).max(most).overwrite(unsigned);
export const count = whole(0, 100_000);
export const cents = whole(0, 100_000_000);
export const panelName = z.string().regex(/^[a-zA-Z][a-zA-Z0-9]{0,31}$/);
export const symbolName = z.string().regex(/^[a-zA-Z][a-zA-Z0-9]{0,31}$/);

/** Values by the symbol they belong to: sizes, options. */
export const named = <Value extends z.ZodType>(value: Value) =>
  z
    .record(symbolName, value)
    .refine((values) => Object.keys(values).length <= MOST_NAMED, { error: 'too-many' });

/** Acts that are timed and that may spoil a piece; the hand times of the catalogue, setting up apart. */
export const handAct = z.enum([
  'cut',
  'score',
  'slit',
  'fold',
  'glue',
  'close-bottom',
  'tuck',
  'place',
  'tie-bow',
  'fill',
]);

/** What every saved row carries: its id, a revision that only grows, and when it was made and last changed (ISO 8601, for showing only). */
export const row = {
  id,
  rev: z.int().min(0).overwrite(unsigned),
  createdAt: z.iso.datetime(),
  changedAt: z.iso.datetime(),
};

/** Came with the app to be looked at: stays as it is until the maker makes it their own. */
export const example = z.literal(true).optional();

/** A whole share of a hundred. */
export const percent = whole(0, 100);
