import type { AnyRow } from '../../shared/tables';
import type { Change } from '../storage/port';
import { keyText, type RowKey, rowAt, type Shelf } from './shelf';

/**
 * Which rows are not kept yet, which are on their way, and the revision each stored row had when it was last seen.
 * Knows rows by key only; the rows themselves are on the shelf.
 */
export class Ledger {
  readonly #unsaved = new Map<string, RowKey>();
  readonly #inFlight = new Map<string, RowKey>();
  readonly #storedRev = new Map<string, number>();

  /** Starts over from what storage holds. */
  reset(stored: Shelf): void {
    this.#unsaved.clear();
    this.#inFlight.clear();
    this.#storedRev.clear();
    for (const [table, rows] of Object.entries(stored) as [RowKey['table'], ReadonlyMap<string, AnyRow>][])
      for (const { id, rev } of rows.values()) this.setRev({ table, id }, rev);
  }

  mark(keys: Iterable<RowKey>): void {
    for (const key of keys) this.#unsaved.set(keyText(key), key);
  }

  unmark(key: RowKey): void {
    this.#unsaved.delete(keyText(key));
  }

  /** Null: the row is not stored, or not any more. */
  setRev(key: RowKey, rev: number | null): void {
    if (rev === null) this.#storedRev.delete(keyText(key));
    else this.#storedRev.set(keyText(key), rev);
  }

  revOf = (key: RowKey): number | null => this.#storedRev.get(keyText(key)) ?? null;

  isUnsaved = (key: RowKey): boolean => this.#unsaved.has(keyText(key)) || this.#inFlight.has(keyText(key));

  get isEmpty(): boolean {
    return this.#unsaved.size === 0 && this.#inFlight.size === 0;
  }

  /** Everything that is not kept, as changes: what the journal holds. */
  pending(shelf: Shelf): readonly Change[] {
    return this.#changes(shelf, new Map([...this.#inFlight, ...this.#unsaved]).values());
  }

  /** Sends what is unsaved on its way. */
  depart(shelf: Shelf): readonly Change[] {
    for (const [text, key] of this.#unsaved) this.#inFlight.set(text, key);
    this.#unsaved.clear();
    return this.#changes(shelf, this.#inFlight.values());
  }

  /** What was on its way has arrived. */
  arrive(): void {
    this.#inFlight.clear();
  }

  /** What was on its way did not arrive. */
  comeBack(): void {
    this.mark(this.#inFlight.values());
    this.#inFlight.clear();
  }

  #changes(shelf: Shelf, keys: Iterable<RowKey>): Change[] {
    return [...keys].flatMap(({ table, id }): Change[] => {
      const row = rowAt(shelf, { table, id });
      const basedOn = this.revOf({ table, id });
      // Made and taken off again before it was ever kept.
      return row === null && basedOn === null ? [] : [{ table, id, row, basedOn }];
    });
  }
}
