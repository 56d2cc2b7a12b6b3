import * as Y from 'yjs';
import type { RowChange } from '../state/keeping/steps';
import type { ComingRow, Exchange } from '../state/ports';
import { keyText, type RowKey } from '../state/shelf';
import { type Path, rowOf, textOf, writesOf } from './fields';
import { placeOf, type ShelfKeys, seal, unseal } from './keys';

/** What is no row, but is shared in the same way: `['#device', id]` and the like. */
export type Note = { readonly path: Path; readonly value: unknown };

const isRow = ([first = '']: Path): boolean => !first.startsWith('#');

/**
 * The values of a shelf, each sealed in its place in one map of a document of a library for merging (yjs). The server relays that document
 * and can read neither what stands in it nor of what. Of one place the newest value stands; different places never disturb one another.
 */
export class SealedRows {
  readonly doc = new Y.Doc();
  readonly #keys: ShelfKeys;
  readonly #device: string;
  readonly #sealed = this.doc.getMap<Uint8Array>('sealed');
  /** Every value in the clear, by the row it is of and by its path. */
  readonly #values = new Map<string, Map<string, unknown>>();
  /** The path of each place. */
  readonly #paths = new Map<string, Path>();
  /** The place of each path, worked out once. */
  readonly #places = new Map<string, string>();
  /** Writes of this device that are on their way into the document, by place: what comes there meanwhile is older. */
  readonly #leaving = new Map<string, number>();
  readonly #listeners = new Set<(rows: readonly ComingRow[], notes: readonly Note[]) => void>();
  #work: Promise<void> = Promise.resolve();
  #queued = 0;
  /** The clock of this device in the document up to which the server keeps what it wrote. */
  #keptTo = 0;

  constructor(keys: ShelfKeys, device: string, state: Uint8Array | null) {
    this.#keys = keys;
    this.#device = device;
    if (state) Y.applyUpdate(this.doc, state);
    this.#queue(async () => {
      await this.#open([...this.#sealed.keys()]);
    });
    this.#sealed.observe((event, { local }) => {
      if (!local) this.#queue(() => this.#hear([...event.keysChanged]));
    });
  }

  /** When everything that came so far is opened, and everything that was told is in the document. */
  settled = (): Promise<void> => this.#work;

  /** Nothing is being opened or sealed, and the server keeps all that was told. */
  get isQuiet(): boolean {
    return this.#queued === 0 && this.unsent === 0;
  }

  /** How many writes the server has not acknowledged. */
  get unsent(): number {
    return this.#queued + Math.max(0, Y.getState(this.doc.store, this.doc.clientID) - this.#keptTo);
  }

  /** The server keeps what these devices wrote up to these clocks. */
  hearKept(kept: readonly (readonly [client: number, clock: number])[]): void {
    for (const [client, clock] of kept)
      if (client === this.doc.clientID) this.#keptTo = Math.max(this.#keptTo, clock);
  }

  watch(listener: (rows: readonly ComingRow[], notes: readonly Note[]) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  all = (): ComingRow[] =>
    [...this.#values.keys()].filter((row) => isRow([row])).flatMap((row) => this.#coming(row) ?? []);

  now = (key: RowKey): ComingRow | null => this.#coming(keyText(key));

  notes = (kind: string): Note[] =>
    [...(this.#values.get(kind) ?? [])].map(([place, value]) => ({
      path: JSON.parse(place) as string[],
      value,
    }));

  tell(changes: readonly RowChange[]): void {
    for (const change of changes)
      this.write(writesOf(change, this.#values.get(keyText(change)) ?? new Map(), this.#device));
  }

  /** Puts values in their places, all at once; `undefined` takes one away. */
  write(writes: readonly (readonly [Path, unknown])[]): void {
    if (writes.length === 0) return;
    for (const [path, value] of writes) this.#set(path, value);
    this.#queue(async () => {
      const ready: [place: string, sealed: Uint8Array | null][] = [];
      for (const [path, value] of writes) {
        const place = await this.#placeOf(path);
        this.#paths.set(place, path);
        ready.push([place, value === undefined ? null : await seal(this.#keys, [path, value])]);
      }
      this.doc.transact(() => {
        for (const [place, sealed] of ready) {
          if (sealed) this.#sealed.set(place, sealed);
          else this.#sealed.delete(place);
        }
      });
      for (const [path] of writes) {
        const left = (this.#leaving.get(textOf(path)) ?? 1) - 1;
        if (left > 0) this.#leaving.set(textOf(path), left);
        else this.#leaving.delete(textOf(path));
      }
    });
    for (const [path] of writes) this.#leaving.set(textOf(path), (this.#leaving.get(textOf(path)) ?? 0) + 1);
  }

  /** Takes everything out of the document but one note; for a shelf that has moved. */
  empty(note: Note): void {
    this.#queue(async () => {
      const place = await this.#placeOf(note.path);
      const sealed = await seal(this.#keys, [note.path, note.value]);
      this.doc.transact(() => {
        this.#sealed.clear();
        this.#sealed.set(place, sealed);
      });
    });
  }

  #queue(work: () => Promise<void>): void {
    this.#queued++;
    this.#work = this.#work.then(work).finally(() => {
      this.#queued--;
    });
  }

  async #placeOf(path: Path): Promise<string> {
    const text = textOf(path);
    const place = this.#places.get(text) ?? (await placeOf(this.#keys, path));
    this.#places.set(text, place);
    return place;
  }

  #set(path: Path, value: unknown): void {
    const row = path[0] ?? '';
    const values = this.#values.get(row) ?? new Map<string, unknown>();
    if (value === undefined) values.delete(textOf(path));
    else values.set(textOf(path), value);
    if (values.size > 0) this.#values.set(row, values);
    else this.#values.delete(row);
  }

  /** Opens what stands in these places; gives the paths whose value is another now. */
  async #open(places: readonly string[]): Promise<Path[]> {
    const opened = await Promise.all(
      places.map(async (place) => [place, await unseal(this.#keys, this.#sealed.get(place))] as const),
    );
    const changed: Path[] = [];
    for (const [place, said] of opened) {
      const path = isSaid(said) ? said[0] : this.#paths.get(place);
      // Sealed by nobody of ours, or for another place: as if it were not there.
      if (!path || this.#leaving.has(textOf(path))) continue;
      if (isSaid(said)) this.#paths.set(place, path);
      const value = isSaid(said) ? said[1] : undefined;
      const was = this.#values.get(path[0] ?? '')?.get(textOf(path));
      if (JSON.stringify(was) === JSON.stringify(value)) continue;
      this.#set(path, value);
      changed.push(path);
    }
    return changed;
  }

  async #hear(places: readonly string[]): Promise<void> {
    const changed = await this.#open(places);
    // A shelf that moves is emptied behind the last one: nobody deleted anything.
    const hasMoved = changed.some(([kind]) => kind === '#moved');
    const rows = hasMoved ? [] : [...new Set(changed.filter(isRow).map(([row = '']) => row))];
    const coming = rows.map((row) => this.#coming(row) ?? { ...keyOf(row), row: null });
    const notes = changed
      .filter((path) => !isRow(path))
      .map((path) => ({ path, value: this.#values.get(path[0] ?? '')?.get(textOf(path)) }));
    if (coming.length > 0 || notes.length > 0)
      for (const listener of this.#listeners) listener(coming, notes);
  }

  #coming(text: string): ComingRow | null {
    const values = this.#values.get(text);
    const row = values && rowOf(text, values);
    return row ? { ...keyOf(text), row } : null;
  }
}

const isSaid = (said: unknown): said is [string[], unknown] =>
  Array.isArray(said) && Array.isArray(said[0]) && said[0].every((part) => typeof part === 'string');

const keyOf = (text: string): RowKey => {
  const [table, id] = text.split('/') as [RowKey['table'], string];
  return { table, id };
};

/** Sealed rows as the state knows an exchange; `told` hears of each time that something goes. */
export const exchangeOf = (rows: SealedRows, agreed: readonly ComingRow[], told: () => void): Exchange => ({
  tell(changes) {
    rows.tell(changes);
    told();
  },
  watch: (listener) => rows.watch((coming) => coming.length > 0 && listener(coming)),
  agreed: () => agreed,
  all: rows.all,
  now: rows.now,
});
