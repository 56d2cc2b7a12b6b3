import type { AnyRow } from '../../../shared/tables';
import type { Change } from '../../storage/port';
import { keyText, type RowKey, rowAt, type Shelf } from '../shelf';

const MOST_SENT = 100;

/**
 * Which rows are not kept yet, which are on their way, and each stored row as it was when it was last seen.
 * The rows themselves are on the shelf; of rows taken off it, the ledger keeps the last state until storage has it in the bin.
 */
export class Ledger {
  readonly #unsaved = new Map<string, RowKey>();
  readonly #inFlight = new Map<string, RowKey>();
  readonly #stored = new Map<string, AnyRow>();
  readonly #takenOff = new Map<string, AnyRow>();
  /** What was sent and not answered for: it may have been kept all the same. */
  #sent: readonly Change[] = [];

  /** Starts over from what storage holds. */
  reset(stored: Shelf): void {
    for (const map of [this.#unsaved, this.#inFlight, this.#stored, this.#takenOff]) map.clear();
    this.#sent = [];
    for (const [table, rows] of Object.entries(stored) as [RowKey['table'], ReadonlyMap<string, AnyRow>][])
      for (const row of rows.values()) this.setStored({ table, id: row.id }, row);
  }

  /** The row is not kept; `before`: as it stood before it was changed or taken off. */
  mark(key: RowKey, before: AnyRow | null): void {
    this.#unsaved.set(keyText(key), key);
    if (before) this.#takenOff.set(keyText(key), before);
  }

  unmark(key: RowKey): void {
    this.#unsaved.delete(keyText(key));
    this.#takenOff.delete(keyText(key));
  }

  /** Null: the row is not stored, or not any more. Its `rev` is the one it has in storage. */
  setStored(key: RowKey, row: AnyRow | null): void {
    if (row === null) this.#stored.delete(keyText(key));
    else this.#stored.set(keyText(key), row);
  }

  /** The row as it was stored when it was last seen. */
  storedOf = (key: RowKey): AnyRow | null => this.#stored.get(keyText(key)) ?? null;

  isUnsaved = (key: RowKey): boolean => this.#unsaved.has(keyText(key)) || this.#inFlight.has(keyText(key));

  get isEmpty(): boolean {
    return this.#unsaved.size === 0 && this.#inFlight.size === 0;
  }

  get sent(): readonly Change[] {
    return this.#sent;
  }

  /** One row as a change: as it is on the shelf, or as it was when it was taken off. */
  changeOf({ table, id }: RowKey, shelf: Shelf): Change | null {
    const here = rowAt(shelf, { table, id });
    const row = here ?? this.#takenOff.get(keyText({ table, id }));
    return row
      ? { table, id, row, deleted: !here, basedOn: this.storedOf({ table, id })?.rev ?? null }
      : null;
  }

  /** Everything that is not kept: what the journal holds. */
  pending(shelf: Shelf): readonly Change[] {
    return this.#changes(shelf, new Map([...this.#inFlight, ...this.#unsaved]).values());
  }

  /** Sends what is unsaved on its way. */
  depart(shelf: Shelf): readonly Change[] {
    for (const [text, key] of this.#unsaved) this.#inFlight.set(text, key);
    this.#unsaved.clear();
    const changes = this.#changes(shelf, this.#inFlight.values());
    this.#sent = [...this.#sent, ...changes].slice(-MOST_SENT);
    return changes;
  }

  /** What was on its way has arrived. */
  arrive(): void {
    for (const text of this.#inFlight.keys()) if (!this.#unsaved.has(text)) this.#takenOff.delete(text);
    this.#inFlight.clear();
    this.#sent = [];
  }

  /** What was on its way did not arrive. */
  comeBack(): void {
    for (const [text, key] of this.#inFlight) this.#unsaved.set(text, key);
    this.#inFlight.clear();
  }

  #changes = (shelf: Shelf, keys: Iterable<RowKey>): Change[] =>
    [...keys].flatMap((key) => this.changeOf(key, shelf) ?? []);
}
