import { Dexie, type Table } from 'dexie';
import type { TracePicture } from '../core/trace';
import type { TraceShelf } from './port';

/** Apart from the rows: what lies here is in no link, file, backup or exchange, and a start does not read it. */
const DATABASE = 'crease-and-count.traces';
/** Pictures kept; the one unused for longest goes first. source: our own, some ten megabytes */
const MOST_KEPT = 20;

interface Kept {
  /** The box it lies under. */
  readonly id: string;
  readonly at: number;
  readonly picture: TracePicture;
}

/** Pictures to draw over, in a database of their own on this device. `now`: milliseconds since 1970. */
export function openTraces(now: () => number, name = DATABASE): TraceShelf {
  const database = new Dexie(name);
  database.version(1).stores({ pictures: 'id, at' });
  const pictures: Table<Kept, string> = database.table('pictures');
  return {
    read: async (id) => (await pictures.get(id))?.picture ?? null,
    keep: async (id, picture) => {
      await pictures.put({ id, at: now(), picture });
      const many = await pictures.count();
      if (many <= MOST_KEPT) return;
      const oldest = await pictures
        .orderBy('at')
        .limit(many - MOST_KEPT)
        .primaryKeys();
      await pictures.bulkDelete(oldest);
    },
    drop: (id) => pictures.delete(id),
    dropAll: () => pictures.clear(),
  };
}
