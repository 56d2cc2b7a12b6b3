import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { type DexieOptions, openDexie } from '../../src/storage/dexie';
import type { WorkbookStorage } from '../../src/storage/port';
import type { Place } from './acceptance';
import { LocalMap } from './local-map';

let databases = 0;
export const newName = () => `workbook-${++databases}`;

export async function openOrThrow(options: DexieOptions): Promise<WorkbookStorage> {
  const opened = await openDexie(options);
  if (!opened.ok) throw new Error(opened.fault.detail);
  return opened.value;
}

/** Works on the database as it is, whatever its version, behind the back of every adapter. */
export async function behindTheBack<Value>(
  name: string,
  work: (db: Dexie) => PromiseLike<Value>,
): Promise<Value> {
  const db = new Dexie(name);
  await db.open();
  try {
    return await work(db);
  } finally {
    db.close();
  }
}

export function newDexiePlace(name = newName()): Place {
  const outside = new LocalMap();
  return {
    open: () => openOrThrow({ name, outside }),
    plant: (table, row) =>
      behindTheBack(name, async (db) => {
        await db.table(table).put(row);
      }),
    lose: (table, id) => behindTheBack(name, (db) => db.table(table).delete(id)),
    countOutside: (census) => outside.setItem(`${name}.census`, JSON.stringify(census)),
  };
}
