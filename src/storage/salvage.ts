import { Dexie } from 'dexie';
import { watchOver } from './faults';

/**
 * Everything that can be read of a database that this app may not or cannot open as its own, store by store, as it stands there.
 * Only reads, and lets go of it again. Null if there is none, or nothing of it can be read.
 */
export async function salvage(name: string): Promise<Readonly<Record<string, readonly unknown[]>> | null> {
  const result = await watchOver(async () => {
    if (!(await Dexie.exists(name))) return null;
    // Without a declared version Dexie takes the database as it is.
    const db = new Dexie(name, { autoOpen: false });
    await db.open();
    try {
      const stores = await Promise.all(
        db.tables.map(async (table): Promise<[string, unknown[]]> => [table.name, await table.toArray()]),
      );
      return Object.fromEntries(stores);
    } finally {
      db.close();
    }
  });
  return result.ok ? result.value : null;
}
