import { FILE_LIMITS } from '../../../shared/read-workbook';
import { type AllRows, type AnyRow, TABLES, type TableName } from '../../../shared/tables';
import { FILE_ROWS } from '../../../shared/workbook';
import { workbookOf, writeReadable } from '../../../shared/write-workbook';
import type { Refusal } from '../../core/rows/refusals';

/** One file of a backup: its place among them, and its text. */
export interface BackupPart {
  readonly number: number;
  readonly of: number;
  readonly text: string;
}

export type BackupWriting =
  | { readonly ok: true; readonly parts: readonly BackupPart[]; readonly rows: number }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** What one file may hold; the same that is read in again. */
interface PartLimits {
  readonly bytes: number;
  readonly rows: Readonly<Record<TableName, number>>;
}
const PART_LIMITS: PartLimits = { bytes: FILE_LIMITS.backupBytes, rows: FILE_ROWS };

/** Room for what stands round the rows of a file: header, names of the tables, brackets. Source: our own, ten times what it takes. */
const AROUND_ROWS = 2000;

type Group = { [T in TableName]: AnyRow[] };

/**
 * All these rows, photos too, as one file; as several only where one would hold more than is read in again. Each file was read back and
 * says what was written. Rows that others point to come in the first files.
 */
export async function backupParts(rows: AllRows, limits = PART_LIMITS): Promise<BackupWriting> {
  const groups = groupsOf(rows, limits);
  const parts: BackupPart[] = [];
  for (const [at, group] of groups.entries()) {
    const written = writeReadable(workbookOf('everything', group as never));
    if (!written.ok) return written;
    parts.push({ number: at + 1, of: groups.length, text: written.text });
    // A large shelf takes seconds: the page stays alive between two files.
    if (groups.length > 1) await new Promise((resolve) => setTimeout(resolve));
  }
  return { ok: true, parts, rows: TABLES.reduce((sum, table) => sum + rows[table].length, 0) };
}

const POINTED_TO_FIRST = ['papers', 'supplies', 'tools', 'recipes', 'events', 'photos'] as const;

function groupsOf(rows: AllRows, limits: PartLimits): readonly Group[] {
  const empty = (): Group => ({ recipes: [], events: [], papers: [], supplies: [], tools: [], photos: [] });
  let group = empty();
  const groups = [group];
  let room = limits.bytes - AROUND_ROWS;
  for (const table of POINTED_TO_FIRST)
    for (const row of rows[table]) {
      const size = sizeOf(row);
      const holdsRows = TABLES.some((other) => group[other].length > 0);
      if ((size > room && holdsRows) || group[table].length >= limits.rows[table]) {
        group = empty();
        groups.push(group);
        room = limits.bytes - AROUND_ROWS;
      }
      group[table].push(row);
      room -= size;
    }
  return groups;
}

const bytesOf = new TextEncoder();

/** Bytes of a row in a file, never fewer than it takes. */
function sizeOf(row: AnyRow): number {
  // A picture is all letters of one byte; the rest of its row is a few hundred, of four bytes at most.
  if ('jpeg' in row) return row.jpeg.length + 2000;
  return bytesOf.encode(JSON.stringify({ in: [row] }, null, 2)).length;
}

/** `crease-and-count-2026-11-26.json`; with its number where there are several. `day` is `YYYY-MM-DD`. */
export const partName = (day: string, { number, of }: Pick<BackupPart, 'number' | 'of'>): string =>
  `crease-and-count-${day}${of > 1 ? `-${number}-of-${of}` : ''}`;
