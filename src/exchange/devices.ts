import { sameValue } from '../state/keeping/same-value';
import type { SharedDevice } from '../state/sharing';
import type { Note } from './sealed-rows';

/** What every device says of itself to the others. */
export interface DeviceNote {
  readonly id: string;
  readonly name: string;
  readonly lastAt: string;
  /** How many changes it has told. */
  readonly edits: number;
  /** Up to which change of every other device it has everything. */
  readonly seen: Readonly<Record<string, number>>;
  /** The public one of its pair of keys. */
  readonly key: JsonWebKey;
}

/** A note of a device as the others wrote it; none if it is no such note. */
export function readDevice({ value }: Note): DeviceNote[] {
  if (typeof value !== 'object' || value === null) return [];
  const { id, name, lastAt, edits, seen, key } = value as Partial<Record<keyof DeviceNote, unknown>>;
  const isWhole =
    typeof id === 'string' &&
    typeof name === 'string' &&
    typeof lastAt === 'string' &&
    typeof edits === 'number' &&
    typeof seen === 'object' &&
    typeof key === 'object';
  return isWhole ? [{ id, name: name.slice(0, 80), lastAt, edits, seen, key } as DeviceNote] : [];
}

/** What a device has to say of itself now; null: it has said so already. */
export function newsOf(
  notes: readonly DeviceNote[],
  { device: id, name, edits }: { readonly device: string; readonly name: string; readonly edits: number },
): Pick<DeviceNote, 'id' | 'name' | 'edits' | 'seen'> | null {
  const seen = Object.fromEntries(
    notes.filter((note) => note.id !== id).map((note) => [note.id, note.edits]),
  );
  const last = notes.find((note) => note.id === id);
  const isSaid = last && last.edits === edits && last.name === name && sameValue(last.seen, seen);
  return isSaid ? null : { id, name, edits, seen };
}

/** The list as a maker sees it: this device first, then the newest. */
export function listDevices(notes: readonly DeviceNote[], own: string, edits: number): SharedDevice[] {
  return notes
    .map(({ id, name, lastAt, seen }) => ({
      id,
      name,
      lastAt,
      hasAll: id === own || (seen[own] ?? 0) >= edits,
      isThis: id === own,
    }))
    .sort((a, b) => Number(b.isThis) - Number(a.isThis) || b.lastAt.localeCompare(a.lastAt));
}
