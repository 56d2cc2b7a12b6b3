import { type AnyRow, readRow } from '../../shared/tables';
import { NOTHING_COUNTED, readCensus } from './census';
import { DatabaseReplaced } from './faults';
import type { Binned, Census, Change, Conflict, NoteChange, Snapshot, Written } from './port';
import type { Transaction } from './transaction';

const MOST_SNAPSHOTS = 20;
/** Typing keeps a row many times a minute; a snapshot so often would leave nothing older than the last sentence. */
const SNAPSHOT_EVERY_MS = 5 * 60_000;

export const CENSUS_NOTE = 'census';
/** How many days the app was opened on, and the last of them. */
export const DAYS_NOTE = 'days';

interface Outcome {
  readonly written: Written;
  /** Null: nothing was counted. */
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
  notes: readonly NoteChange[],
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
  const onDay = changes.some(({ deleted }) => deleted) ? (await readDays(tx)).count : 0;
  for (const [index, change] of changes.entries()) {
    const stored = found[index]?.stored ?? null;
    const rev = await keep(tx, change, stored, at, onDay);
    rows += (rev === null ? 0 : 1) - (stored ? 1 : 0);
    revSum += (rev ?? 0) - (stored?.rev ?? 0);
    revs.push(rev);
  }
  const kept: [string, unknown][] = [];
  for (const note of notes) kept.push([note.id, await keepNote(tx, note)]);
  const written = { outcome: 'kept', revs, notes: Object.fromEntries(kept) } as const;
  if (changes.length === 0) return { written: { ...written, generation }, census: null };
  generation++;
  // Rows that were never counted may go as well; a count below none would be no count at all.
  const census = { generation, rows: Math.max(0, rows), revSum: Math.max(0, revSum) };
  await keepNote(tx, { id: CENSUS_NOTE, value: census });
  return { written: { ...written, generation }, census };
}

/** On how many days the app was opened, and which was the last. */
export async function readDays(tx: Transaction): Promise<{ readonly count: number; readonly last: string }> {
  const days = noteValue(await tx.get('notes', DAYS_NOTE));
  const { count, last } = isFields(days) ? days : {};
  return {
    count: Number.isSafeInteger(count) ? (count as number) : 0,
    last: typeof last === 'string' ? last : '',
  };
}

/** Keeps a note over the one that is there, null takes it away; gives it as it is now. */
export async function keepNote(tx: Transaction, { id, value, before }: NoteChange): Promise<unknown> {
  if (value === null) {
    await tx.drop('notes', id);
    return null;
  }
  const stored = await tx.get('notes', id);
  const now = laidOver(noteValue(stored), before, value);
  await tx.put('notes', { id, value: now, rev: revOf(stored) + 1 });
  return now;
}

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

/** The fields in which `value` differs from `before`, laid over what is stored; `value` itself where the three do not have fields. */
function laidOver(stored: unknown, before: unknown, value: unknown): unknown {
  if (!isFields(stored) || !isFields(before) || !isFields(value)) return value;
  const changed = Object.entries(value).filter(([name, is]) => is !== before[name]);
  return { ...stored, ...Object.fromEntries(changed) };
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
  const theirs = raw === undefined ? 'gone' : readRowOr(table, raw);
  const fits = typeof theirs === 'string' ? theirs === 'gone' && basedOn === null : theirs.rev === basedOn;
  const conflict: Conflict | null = fits ? null : { table, id, theirs };
  return { conflict, stored: typeof theirs === 'string' ? null : theirs };
}

export function readRowOr(table: Change['table'], raw: unknown): AnyRow | 'unreadable' {
  const reading = readRow(table, raw);
  return reading.ok ? reading.row : 'unreadable';
}

async function keep(
  tx: Transaction,
  { table, id, row, deleted, forGood }: Change,
  stored: AnyRow | null,
  at: string,
  onDay: number,
): Promise<number | null> {
  const of = `${table}/${id}`;
  if (deleted && forGood) {
    await tx.drop(table, id);
    return null;
  }
  const binned = (await tx.get('bin', of)) as Binned | undefined;
  const replaced = binned?.row ?? (deleted ? null : stored);
  if (replaced) {
    const rev = revOf(replaced);
    const snapshot: Snapshot = { id: `${of}@${rev}`, of, table, rev, takenAt: at, row: replaced };
    await takeSnapshot(tx, snapshot, binned !== undefined);
  }
  const rev = Math.max(stored?.rev ?? 0, revOf(binned?.row), row.rev) + 1;
  if (deleted) {
    await tx.put('bin', { id: of, table, row: { ...row, rev }, deletedAt: at, onDay });
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
