import { Dexie } from 'dexie';
import type { Counted, Writes } from './shown-notes';

/** What this browser keeps of a link that it was opened with. */
export interface Visited {
  /** What this device counts under. */
  readonly device: string;
  readonly own: readonly Counted[];
  /** The same as the server last acknowledged it. */
  readonly sent: readonly Counted[];
  /** What was last shown. */
  readonly shown: Writes;
}

/** Where that is kept, apart from any workbook of this browser. */
export function memoryOfVisits(database: string) {
  const db = new Dexie(`${database}.visits`);
  db.version(1).stores({ kept: 'id' });
  const table = db.table<{ readonly id: string; readonly value: Visited }, string>('kept');
  return {
    read: async (name: string) => (await table.get(name))?.value ?? null,
    keep: async (name: string, value: Visited) => {
      await table.put({ id: name, value });
    },
    forget: async (name: string) => {
      await table.delete(name);
    },
  };
}
export type MemoryOfVisits = ReturnType<typeof memoryOfVisits>;
