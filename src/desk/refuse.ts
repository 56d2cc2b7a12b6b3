import type { Refusal } from '../core/rows/refusals';
import type { DeskRefusal } from './verb';

/** What was written at `path`, and why the desk turns it away. */
export const refuse = (
  code: string,
  path: string,
  found: string,
  expected: string,
  says: string,
): DeskRefusal => ({ code, path, found, expected, says });

/** A refusal of what stands in a file, said with the file's name. */
export const refuseInFile = (file: string, refusal: Refusal): DeskRefusal => ({
  ...refusal,
  says: `${file}${refusal.path && `, ${refusal.path}`}: found ${refusal.found}, expected ${refusal.expected}.`,
});
