import '../src/core/rows/jitless';
import type { Refusal } from '../src/core/rows/refusals';
import { readWorkbook } from './read-workbook';
import { TABLES } from './tables';
import { FORMAT, SCHEMA, type WorkbookFile, workbookFile } from './workbook';

// In every browser and in Node; the core's own compiler settings know neither.
declare const TextEncoder: new () => { encode(text: string): Uint8Array };

type FileRows = Partial<Pick<WorkbookFile, (typeof TABLES)[number]>>;

/** A file of the newest format holding these rows; tables left out are empty. */
export const workbookOf = (kind: WorkbookFile['kind'], rows: FileRows): WorkbookFile => ({
  format: FORMAT,
  schema: SCHEMA,
  kind,
  recipes: [],
  events: [],
  papers: [],
  supplies: [],
  tools: [],
  photos: [],
  ...rows,
});

type WorkbookWriting =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** A workbook as text that was read back and says the same; why not, where `readWorkbook` would refuse it. Its rows are readable ones. */
export function writeReadable(file: WorkbookFile): WorkbookWriting {
  const text = textOf(inOrder(file));
  const reading = readWorkbook(new TextEncoder().encode(text));
  if (!reading.ok) return { ok: false, refusals: reading.refusals };
  if (textOf(inOrder(reading.file)) === text) return { ok: true, text };
  const expected = 'what was written';
  return {
    ok: false,
    refusals: [{ code: 'wrong-type', path: '', found: 'something else', expected }],
  };
}

/**
 * A workbook as text: fields in the order the format lists them, sizes and options by name, rows by id, two spaces, one line break at
 * the end. The same content always gives the same text. Throws on a file the format would refuse: that is a programmer's slip.
 */
export function writeWorkbook(file: WorkbookFile): string {
  return textOf(inOrder(workbookFile.parse(file)));
}

const textOf = (file: WorkbookFile): string => `${JSON.stringify(file, null, 2)}\n`;

/** The same workbook with its rows sorted by id and its named sizes and options by name. */
export function inOrder(file: WorkbookFile): WorkbookFile {
  const sorted = { ...file };
  for (const table of TABLES) Object.assign(sorted, { [table]: file[table].toSorted(byId) });
  return {
    ...sorted,
    recipes: sorted.recipes.map((recipe) => ({
      ...recipe,
      sizesMm: byName(recipe.sizesMm),
      options: byName(recipe.options),
    })),
  };
}

const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1);

const byName = <Value>(named: Record<string, Value>): Record<string, Value> =>
  Object.fromEntries(Object.entries(named).sort(([a], [b]) => (a < b ? -1 : 1)));
