import type { FavorEvent } from '../../shared/workbook';
import { sameValue } from '../state/keeping/same-value';
import type { ComingRow, Exchange, ExchangeDoor } from '../state/ports';
import type { Sharing } from '../state/sharing';
import { keyText } from '../state/shelf';
import { type Counted, countedAs } from '../state/shown-event';
import { countingKeys, helpersOf, newDevice, type ShownLink, shownKeys } from './keys';
import type { MemoryOfVisits, Visited } from './memory-of-visits';
import { type RoomHost, stayIn } from './room';
import type { Note, SealedRows } from './sealed-rows';
import { allNotes, countNotes, difference, isOver, readAbout, readCounts, readRows } from './shown-notes';

/** What a visit needs of the browser. */
export interface VisitWorld {
  readonly address: string;
  readonly memory: MemoryOfVisits;
  readonly wait: (milliseconds: number) => Promise<void>;
  /** Hears in which unit the maker thinks, and of which event the link tells, once that is known. */
  readonly onAbout: (about: { readonly eventId: string; readonly unit: 'in' | 'mm' }) => void;
}

/**
 * Somebody else's event, by a link: its rows are laid into the workbook of this page as they come, and what is counted here goes into a
 * room of its own, under a name that nobody else writes. Whoever visits holds no key of the shelf.
 */
export class Visit {
  readonly #door: ExchangeDoor;
  readonly #link: ShownLink;
  readonly #world: VisitWorld;
  readonly #stop = new AbortController();
  readonly #listeners = new Set<(rows: readonly ComingRow[]) => void>();
  #kept: Visited = { device: '', own: [], sent: [], shown: [] };
  #others: readonly Counted[] = [];
  #counts: SealedRows | null = null;
  #line: Sharing['line'] = 'joining';
  #given = new Map<string, unknown>();
  #keeping: Promise<void> = Promise.resolve();
  #joined = false;

  constructor(door: ExchangeDoor, link: ShownLink, world: VisitWorld) {
    this.#door = door;
    this.#link = link;
    this.#world = world;
  }

  /** Shows what was shown before, then what there is now. */
  async start(): Promise<void> {
    const link = this.#link;
    // A browser that keeps nothing begins under a new name each time.
    const kept = await this.#world.memory.read(link.name).catch(() => null);
    this.#kept = kept ?? { ...this.#kept, device: newDevice(helpersOf(link.name)) };
    this.#lay();
    this.#say(this.#line);
    const host = { address: this.#world.address, device: this.#kept.device, wait: this.#world.wait };
    const hear = (rows: SealedRows) => this.#hear(rows);
    const onDown: RoomHost['onDown'] = (why) => {
      if (this.#line !== 'removed') this.#say(why === 'refused' ? 'refused' : 'offline');
    };
    void stayIn(await shownKeys(link), { ...host, onUp: hear, onChange: hear, onDown }, this.#stop.signal);
    if (link.kind !== 'bench') return;
    const count = (rows: SealedRows) => this.#hearCounts(rows);
    const onCountsDown = () => {
      this.#counts = null;
    };
    void stayIn(
      await countingKeys(link),
      { ...host, onUp: count, onChange: count, onDown: onCountsDown },
      this.#stop.signal,
    );
  }

  close(): void {
    this.#stop.abort();
  }

  #hear(rows: SealedRows): void {
    const notes = allNotes(rows);
    if (isOver(notes)) {
      this.#stop.abort();
      this.#say('removed');
      this.#keeping = this.#keeping.then(() => this.#forget());
      return;
    }
    // A shelf that has not shown anything yet.
    if (!readAbout(notes)) return;
    this.#keep({ shown: notes.map(({ path, value }) => [path, value]) });
    this.#lay();
    this.#say('joined');
  }

  #hearCounts(rows: SealedRows): void {
    this.#counts = rows;
    this.#others = readCounts(rows.notes('#count'), this.#event()).filter(
      ({ by }) => by !== this.#kept.device && by?.startsWith(helpersOf(this.#link.name)),
    );
    this.#write();
    if (rows.isQuiet) this.#keep({ sent: this.#kept.own });
    this.#lay();
    this.#say(this.#line);
  }

  /** Writes what was counted here, and nothing of others. */
  #write(): void {
    const rows = this.#counts;
    if (!rows) return;
    const mine = rows.notes('#count').filter(({ path }) => path[2] === this.#kept.device);
    rows.write(difference(mine, countNotes(this.#kept.own)));
  }

  /** What was counted on this page, now that it is in the workbook. */
  #tell(): void {
    const stages = this.#event()?.run?.stages ?? [];
    const own = stages.filter(({ by }) => by === this.#kept.device);
    if (JSON.stringify(own) === JSON.stringify(this.#kept.own)) return;
    this.#keep({ own });
    // Kept here first: an older count that was kept would be written over what the server has.
    void this.#keeping.then(() => this.#write());
    this.#say(this.#line);
  }

  #keep(change: Partial<Visited>): void {
    if (this.#line === 'removed') return;
    this.#kept = { ...this.#kept, ...change };
    const kept = this.#kept;
    this.#keeping = this.#keeping
      .then(() => this.#world.memory.keep(this.#link.name, kept))
      // What cannot be kept as it is now is not left there as it was; the next page then has another name.
      .catch(() => this.#forget());
  }

  #forget(): Promise<void> {
    return this.#world.memory.forget(this.#link.name).catch(() => undefined);
  }

  get #notes(): Note[] {
    return this.#kept.shown.map(([path, value]) => ({ path, value }));
  }

  #event(): FavorEvent | undefined {
    const about = readAbout(this.#notes);
    return about ? this.#door.event(about.eventId) : undefined;
  }

  /** The rows as they are now: what is shown, with the newest counts of everybody. */
  #rows(): ComingRow[] {
    const notes = this.#notes;
    return readRows(notes).map((coming) => {
      if (coming.table !== 'events') return coming;
      const event = coming.row as FavorEvent;
      const shown = readCounts(notes, { ...event, id: coming.id });
      const all = new Map<string, Counted>();
      for (const count of [...shown, ...this.#others]) all.set(countedAs(count), count);
      // What was counted here comes last, since the page opens where this device left off.
      for (const count of shown) if (count.by === this.#kept.device) all.delete(countedAs(count));
      for (const count of this.#kept.own) all.set(countedAs(count), count);
      const firstRight = event.run?.firstRight ?? [];
      return { ...coming, row: { ...event, run: { stages: [...all.values()], firstRight } } };
    });
  }

  #lay(): void {
    const about = readAbout(this.#notes);
    if (!about) return;
    if (!this.#joined) {
      this.#joined = true;
      this.#world.onAbout(about);
      this.#note(this.#rows());
      this.#door.join(this.#exchange, 'take', () => undefined);
      return;
    }
    const coming = this.#note(this.#rows());
    if (coming.length > 0) for (const listener of this.#listeners) listener(coming);
  }

  /** Which of these rows are not as they were given last. */
  #note(rows: readonly ComingRow[]): ComingRow[] {
    const next = new Map(rows.map((row) => [keyText(row), row.row]));
    const gone = [...this.#given.keys()].filter((key) => !next.has(key));
    const changed = rows.filter((row) => !sameValue(row.row, this.#given.get(keyText(row))));
    this.#given = next;
    return [
      ...changed,
      ...gone.map((key): ComingRow => {
        const [table, id] = key.split('/') as [ComingRow['table'], string];
        return { table, id, row: null };
      }),
    ];
  }

  readonly #exchange: Exchange = {
    tell: () => this.#tell(),
    watch: (listener) => {
      this.#listeners.add(listener);
      return () => this.#listeners.delete(listener);
    },
    agreed: () => [],
    all: () => this.#rows(),
    now: (key) => this.#rows().find((row) => keyText(row) === keyText(key)) ?? null,
  };

  #say(line: Sharing['line']): void {
    this.#line = line;
    const { own, sent, device } = this.#kept;
    const missing = (there: readonly Counted[]) =>
      own.filter((count) => !there.some((other) => sameValue(count, other))).length;
    const shown = readCounts(this.#notes, this.#event());
    this.#door.show({
      line,
      device,
      unsent: missing(sent),
      devices: [{ id: 'maker', name: '', lastAt: '', hasAll: missing(shown) === 0, isThis: false }],
      deletions: 0,
      shown: [],
    });
  }
}
