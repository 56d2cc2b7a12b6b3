import { Dexie } from 'dexie';

/** Values by name, in a small database of their own. */
export function keptValues<Value>(database: string) {
  const db = new Dexie(database);
  db.version(1).stores({ kept: 'id' });
  const table = db.table<{ readonly id: string; readonly value: Value }, string>('kept');
  return {
    read: async (id: string) => (await table.get(id))?.value ?? null,
    keep: async (id: string, value: Value) => {
      await table.put({ id, value });
    },
    forget: async (id: string) => {
      await table.delete(id);
    },
    clear: async () => {
      await table.clear();
    },
  };
}
