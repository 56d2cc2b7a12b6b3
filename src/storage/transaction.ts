import type { Rows } from '../../shared/tables';
import type { Binned, Snapshot } from './port';

/** A small thing kept by name: settings, the census, the undo list. */
interface Note {
  readonly id: string;
  readonly value: unknown;
  /** Grows by one with every change. */
  readonly rev: number;
}

/** What each store of the database holds. Every store is keyed by `id`, a string, from its first version on. */
interface Stores extends Rows {
  bin: Binned;
  snapshots: Snapshot;
  notes: Note;
}
export type StoreName = keyof Stores;

export const STORES = [
  'recipes',
  'events',
  'papers',
  'supplies',
  'tools',
  'photos',
  'bin',
  'snapshots',
  'notes',
] as const satisfies readonly StoreName[];

/**
 * The inside of one read-write transaction, which each adapter gives: what the rules of `apply-changes.ts` are written in, once.
 * What is read is `unknown`, since other versions of the app wrote it.
 */
export interface Transaction {
  get(store: StoreName, id: string): Promise<unknown>;
  /** In the order of `ids`; `undefined` where there is none. */
  getMany(store: StoreName, ids: readonly string[]): Promise<readonly unknown[]>;
  all(store: StoreName): Promise<readonly unknown[]>;
  put<S extends StoreName>(store: S, value: Stores[S]): Promise<unknown>;
  drop(store: StoreName, id: string): Promise<unknown>;
  clear(store: StoreName): Promise<unknown>;
  snapshotsOf(of: string): Promise<readonly Snapshot[]>;
}
