import './jitless';
import { z } from 'zod';

/** How this browser shows things; never part of a file. */
export const settings = z.strictObject({
  unit: z.enum(['in', 'mm']),
  theme: z.enum(['system', 'light', 'dark']),
  currency: z.string().regex(/^[A-Z]{3}$/),
});
export type Settings = z.infer<typeof settings>;

export const FIRST_SETTINGS: Settings = { unit: 'in', theme: 'system', currency: 'USD' };
