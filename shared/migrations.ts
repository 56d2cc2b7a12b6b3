import { SCHEMA } from './workbook';

/**
 * One step of the file format: takes a parsed file of schema `from` and gives one of schema `from + 1`. Steps work on plain data, since
 * the schemas of old formats are gone, and must not throw on data that is not what it says: the reader's schema refuses that later.
 */
export interface FormatStep {
  readonly from: number;
  readonly move: (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** Every step there ever was, oldest first. A step that has been released is never edited and never dropped. */
const FORMAT_STEPS: readonly FormatStep[] = [
  // Photos became a table. Everything else that schema 2 knows may be left out.
  { from: 1, move: (file) => (file['kind'] === 'contents' ? { ...file } : { photos: [], ...file }) },
  // Guests, and what food holds: all of it may be left out.
  { from: 2, move: (file) => ({ ...file }) },
];

/** A parsed file of schema `from` as one of the newest schema; steps missing from the chain are a programmer's slip and throw. */
export function moveToNewest(
  file: Readonly<Record<string, unknown>>,
  from: number,
  steps: readonly FormatStep[] = FORMAT_STEPS,
  newest: number = SCHEMA,
): Record<string, unknown> {
  let moved = { ...file };
  for (let schema = from; schema < newest; schema++) {
    const step = steps.find((candidate) => candidate.from === schema);
    if (!step) throw new RangeError(`no way from schema ${schema} to ${schema + 1}`);
    moved = { ...step.move(moved), schema: schema + 1 };
  }
  return moved;
}
