import { type AnyRow, readRow } from '../../shared/tables';
import { NOTHING_COUNTED, readCensus } from './census';
import { DatabaseReplaced } from './faults';
import type { Binned, Census, Change, Conflict, Snapshot, Written } from './port';
import type { Note, Transaction } from './transaction';

const MOST_SNAPSHOTS = 20;
/** Typing keeps a row many times a minute; a snapshot so often would leave nothing older than the last sentence. */
const SNAPSHOT_EVERY_MS = 5 * 60_000;

export const CENSUS_NOTE = 'census';

interface Outcome {
  readonly written: Written;
  readonly census: Census | null;
}

/**
 * The rule of every write, inside one transaction: compare all revisions first, then keep all rows, or keep none and say why.
 * Throws DatabaseReplaced if the database is older than the generation that was seen in it before.
 */
export async function applyChanges(
  tx: Transaction,
  changes: readonly Change[],
  at: string,
  notes: readonly Note[],
  generationSeen: number,
): Promise<Outcome> {
  const noted = readCensus(noteValue(await tx.get('notes', CENSUS_NOTE))) ?? NOTHING_COUNTED;
  if (noted.generation < generationSeen) throw new DatabaseReplaced(`generation ${noted.generation}`);
  const found = [];
  for (const change of changes) found.push(await compare(tx, change));
  const conflicts = found.flatMap(({ conflict }) => conflict ?? []);
  if (conflicts.length > 0) return { written: { outcome: 'conflict', conflicts }, census: null };

  let { generation, rows, revSum } = noted;
  const revs: (number | null)[] = [];
  for (const [index, change] of changes.entries()) {
    const stored = found[index]?.stored ?? null;
    const rev = await keep(tx, change, stored, at);
    rows += (rev === null ? 0 : 1) - (stored ? 1 : 0);
    revSum += (rev ?? 0) - (stored?.rev ?? 0);
    revs.push(rev);
  }
  generation++;
  // Rows that were never counted may go as well; a count below none would be no count at all.
  const census = { generation, rows: Math.max(0, rows), revSum: Math.max(0, revSum) };
  for (const note of [...notes, { id: CENSUS_NOTE, value: census }]) await tx.put('notes', note);
  return { written: { outcome: 'kept', revs }, census };
}

/** The revision a stored row says it has; 0 where it does not say. */
export const revOf = (raw: unknown): number => {
  const rev = typeof raw === 'object' && raw !== null ? (raw as { rev?: unknown }).rev : 0;
  return Number.isSafeInteger(rev) ? Math.max(0, rev as number) : 0;
};

export const noteValue = (raw: unknown): unknown =>
  typeof raw === 'object' && raw !== null ? (raw as { value?: unknown }).value : undefined;

async function compare(tx: Transaction, { table, id, basedOn }: Change) {
  const raw = await tx.get(table, id);
  const theirs = raw === undefined ? 'gone' : rowOr(readRow(table, raw));
  const fits = typeof theirs === 'string' ? theirs === 'gone' && basedOn === null : theirs.rev === basedOn;
  const conflict: Conflict | null = fits ? null : { table, id, theirs };
  return { conflict, stored: typeof theirs === 'string' ? null : theirs };
}

const rowOr = (reading: ReturnType<typeof readRow>): AnyRow | 'unreadable' =>
  reading.ok ? reading.row : 'unreadable';

async function keep(
  tx: Transaction,
  { table, id, row, deleted }: Change,
  stored: AnyRow | null,
  at: string,
): Promise<number | null> {
  const of = `${table}/${id}`;
  const binned = (await tx.get('bin', of)) as Binned | undefined;
  const replaced = binned?.row ?? (deleted ? null : stored);
  if (replaced) {
    const rev = revOf(replaced);
    const snapshot: Snapshot = { id: `${of}@${rev}`, of, table, rev, takenAt: at, row: replaced };
    await takeSnapshot(tx, snapshot, binned !== undefined);
  }
  const rev = Math.max(stored?.rev ?? 0, revOf(binned?.row), row.rev) + 1;
  if (deleted) {
    await tx.put('bin', { id: of, table, row: { ...row, rev }, deletedAt: at });
    await tx.drop(table, id);
    return null;
  }
  if (binned) await tx.drop('bin', of);
  await tx.put(table, { ...row, rev });
  return rev;
}

/** Keeps the state that is about to be replaced, if the last such state is some minutes old or it must be; drops the oldest beyond twenty. */
async function takeSnapshot(tx: Transaction, snapshot: Snapshot, must: boolean): Promise<void> {
  const earlier = await tx.snapshotsOf(snapshot.of);
  const last = earlier.at(0);
  const age = last ? Math.abs(Date.parse(snapshot.takenAt) - Date.parse(last.takenAt)) : Infinity;
  if (!must && age < SNAPSHOT_EVERY_MS) return;
  await tx.put('snapshots', snapshot);
  for (const old of earlier.slice(MOST_SNAPSHOTS - 1)) await tx.drop('snapshots', old.id);
}
