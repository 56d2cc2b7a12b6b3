import { refuse } from './refuse';
import type { DeskRefusal } from './verb';

/** How long one answer may take. */
export function readSeconds(text: string): number | DeskRefusal {
  const seconds = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (seconds > 0 && seconds <= 3600) return seconds;
  return refuse(
    'not-seconds',
    '--seconds',
    text,
    'more than 0 and at most 3600',
    `--seconds takes a number such as 10, not “${text}”.`,
  );
}
