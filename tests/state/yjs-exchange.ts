import * as Y from 'yjs';
import type { AnyRow } from '../../shared/tables';
import type { RowChange } from '../../src/state/keeping/steps';
import type { ComingRow, Exchange } from '../../src/state/ports';
import { keyText, type RowKey } from '../../src/state/shelf';

type Fields = Y.Map<unknown>;

/**
 * A double of what could stand behind the seam: each row a map of fields in a document of a library for merging (yjs), named sizes and
 * options maps within. Nothing travels until two are brought together.
 */
export class YjsExchange implements Exchange {
  readonly #doc = new Y.Doc();
  readonly #rows = this.#doc.getMap<Fields>('rows');
  readonly #listeners = new Set<(rows: readonly ComingRow[]) => void>();

  tell(changes: readonly RowChange[]): void {
    this.#doc.transact(() => {
      for (const change of changes) this.#take(change);
    });
  }

  watch(listener: (rows: readonly ComingRow[]) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  told = (row: AnyRow): AnyRow => row;

  agreed = (): readonly ComingRow[] => [];

  all = (): readonly ComingRow[] => [...this.#rows.keys()].flatMap((key) => this.#coming(key) ?? []);

  now = (key: RowKey): ComingRow | null => this.#coming(keyText(key));

  /** Brings in what the other has and this one has not. */
  hearFrom(other: YjsExchange): void {
    const news = Y.encodeStateAsUpdate(other.#doc, Y.encodeStateVector(this.#doc));
    const before = new Map([...this.#rows.keys()].map((key) => [key, JSON.stringify(this.#rows.get(key))]));
    Y.applyUpdate(this.#doc, news);
    const keys = new Set([...before.keys(), ...this.#rows.keys()]);
    const changed = [...keys].filter((key) => before.get(key) !== JSON.stringify(this.#rows.get(key)));
    const rows = changed.map((key) => this.#coming(key) ?? { ...keyOf(key), row: null });
    if (rows.length > 0) for (const listener of this.#listeners) listener(rows);
  }

  #take(change: RowChange): void {
    const key = keyText(change);
    if (change.do === 'remove') this.#rows.delete(key);
    if (change.do === 'add') this.#rows.set(key, mapOf({ ...change.row }));
    if (change.do !== 'edit') return;
    for (const { at, after } of change.fields) {
      const [field, name] = at;
      const row = this.#rows.get(key);
      const inner = name === undefined ? row : row?.get(field);
      if (!(inner instanceof Y.Map)) continue;
      if (after === undefined) inner.delete(name ?? field);
      else inner.set(name ?? field, heldAs(after));
    }
  }

  #coming(key: string): ComingRow | null {
    const row = this.#rows.get(key);
    return row ? { ...keyOf(key), row: row.toJSON() } : null;
  }
}

const keyOf = (key: string): RowKey => {
  const [table, id] = key.split('/') as [RowKey['table'], string];
  return { table, id };
};

const mapOf = (fields: Readonly<Record<string, unknown>>): Fields =>
  new Y.Map(Object.entries(fields).map(([name, value]) => [name, heldAs(value)]));

const heldAs = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? mapOf(value as Readonly<Record<string, unknown>>)
    : value;
