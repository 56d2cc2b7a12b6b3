import { keptValues } from './kept-values';
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
  const kept = keptValues<unknown>(`${database}.sharing`);
  return {
    readPairing: async () => (await kept.read('pairing')) as Pairing | null,
    keepPairing: (value: Pairing) => kept.keep('pairing', value),
    readState: async (shelf: string) => (await kept.read(shelf)) as Uint8Array | null,
    keepState: (shelf: string, value: Uint8Array) => kept.keep(shelf, value),
    forget: kept.clear,
  };
}
export type MemoryOfSharing = ReturnType<typeof memoryOfSharing>;
