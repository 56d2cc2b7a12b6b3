import '../src/core/rows/jitless';
import { z } from 'zod';
import { lengthMm } from '../src/core/rows/lengths';

/** How this browser shows things; never part of a file. */
export const settings = z.strictObject({
  unit: z.enum(['in', 'mm']),
  theme: z.enum(['system', 'light', 'dark', 'contrast']),
  currency: z.string().regex(/^[A-Z]{3}$/),
  /** An offcut is worth keeping if its shorter side is at least so long. */
  usableOffcutMm: lengthMm.optional(),
  /** Hours a week for this work, all events together. */
  weekHours: z.int().min(0).max(168).optional(),
  /** The first hints were read or put away. */
  hintsSeen: z.literal(true).optional(),
  /** Timers that run at the bench: of which event, at which step of its run (null: a whole box), and since when they count. */
  clocks: z
    .array(
      z.strictObject({
        eventId: z.string().max(64),
        step: z.string().max(200).nullable(),
        since: z.iso.datetime(),
      }),
    )
    .max(20)
    .optional(),
});
export type Settings = z.infer<typeof settings>;

export const FIRST_SETTINGS: Settings = { unit: 'in', theme: 'system', currency: 'USD' };
