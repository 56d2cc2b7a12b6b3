import { Dexie } from 'dexie';
import type { ShelfLink } from './keys';

/** What this device knows of the shelf that it shares. */
export interface Pairing {
  readonly link: ShelfLink;
  /** Where the shelf was before it moved: what was agreed there is the measure until the first time here. */
  readonly before?: ShelfLink;
  readonly device: string;
  readonly name: string;
  /** Its own pair of keys, by which the others hand it a new secret; the private one cannot leave the browser. */
  readonly pair: CryptoKeyPair;
  /** How many changes it has told so far. */
  readonly edits: number;
}

/** Where the browser keeps that, beside the workbook: the pairing, and each document as it was last agreed on. */
export function memoryOfSharing(database: string) {
  const db = new Dexie(`${database}.sharing`);
  db.version(1).stores({ kept: 'id' });
  const table = db.table<{ readonly id: string; readonly value: unknown }, string>('kept');
  return {
    readPairing: async () => ((await table.get('pairing'))?.value as Pairing | undefined) ?? null,
    keepPairing: async (value: Pairing) => {
      await table.put({ id: 'pairing', value });
    },
    readState: async (shelf: string) => ((await table.get(shelf))?.value as Uint8Array | undefined) ?? null,
    keepState: async (shelf: string, value: Uint8Array) => {
      await table.put({ id: shelf, value });
    },
    forget: () => table.clear(),
  };
}
export type MemoryOfSharing = ReturnType<typeof memoryOfSharing>;
