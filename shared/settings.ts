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
  /** The first hints were read or put away. */
  hintsSeen: z.literal(true).optional(),
});
export type Settings = z.infer<typeof settings>;

export const FIRST_SETTINGS: Settings = { unit: 'in', theme: 'system', currency: 'USD' };
