import type { Change, Conflict, FaultKind, Journal, StorageFault, WorkbookStorage } from '../storage/port';
import { Ledger } from './ledger';
import { isoTime } from './ports';
import { type Settlement, settleConflict } from './settle-conflicts';
import { type RowKey, rowAt, type Shelf, withRow } from './shelf';

/** The last keystroke is kept this much later. Source: our own; 300 ms is promised. */
export const AUTOSAVE_MS = 250;
/** Typing without a pause is kept this often. Source: our own. */
const LONGEST_WAIT_MS = 2000;
/** After a failure that may pass. Source: our own. */
const TRY_AGAIN_MS = 5000;

export type SaveState =
  | { readonly state: 'saved' | 'saving' }
  | { readonly state: 'not-saved'; readonly why: FaultKind };

/** What the saver reads and sets in the store around it. */
export interface SaverHost {
  readonly journal: Journal;
  now(): number;
  newId(): string;
  shelf(): Shelf;
  setShelf(shelf: Shelf): void;
  setSave(save: SaveState): void;
  /** What is kept beside the rows in the same transaction. */
  notes(): Readonly<Record<string, unknown>>;
  onKept(changes: readonly Change[]): void;
  onSettled(settlements: readonly Settlement[]): void;
}

/** Keeps the shelf: journals at every keystroke, writes soon after the last one, and says `saved` only when storage said so. */
export class Saver {
  readonly #host: SaverHost;
  readonly #ledger = new Ledger();
  #storage: WorkbookStorage | null = null;
  #failure: FaultKind | null = null;
  #notesChanged = false;
  #running: Promise<void> | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #waitingSince: number | null = null;

  constructor(host: SaverHost) {
    this.#host = host;
  }

  /** Takes over a storage and the rows found in it. */
  start(storage: WorkbookStorage, stored: Shelf): void {
    this.#storage = storage;
    this.#failure = null;
    this.#ledger.reset(stored);
  }

  /** These rows were changed, added or taken off: in the journal now, kept soon. */
  touch(keys: readonly RowKey[]): void {
    this.#ledger.mark(keys);
    this.#writeJournal();
    this.#keepSoon();
  }

  /** Something beside the rows changed. */
  touchNotes(): void {
    this.#notesChanged = true;
    this.#keepSoon();
  }

  /** Keeps at once what is not kept; resolves when it is, or when it failed. */
  keepNow(): Promise<void> {
    clearTimeout(this.#timer);
    this.#running ??= this.#keepAll().finally(() => {
      this.#running = null;
    });
    return this.#running;
  }

  /** Another tab kept these rows: shows what it kept, unless there is unsaved work in them here (which then meets it when kept). */
  async refresh(keys: readonly RowKey[]): Promise<void> {
    for (const key of keys) {
      const result = await this.#storage?.readRow(key.table, key.id);
      if (!result?.ok || result.value === 'unreadable' || this.#ledger.isUnsaved(key)) continue;
      const row = result.value === 'gone' ? null : result.value;
      if (row && row.rev <= (this.#ledger.revOf(key) ?? -1)) continue;
      this.#ledger.setRev(key, row?.rev ?? null);
      this.#host.setShelf(withRow(this.#host.shelf(), key, row));
    }
  }

  /** Work that another tab left behind: comes onto the shelf as unsaved work, beside what was kept since where they differ. */
  takeOver(changes: readonly Change[]): void {
    const conflicts: Conflict[] = [];
    for (const { table, id, row, basedOn } of changes) {
      const key = { table, id };
      const stored = rowAt(this.#host.shelf(), key);
      this.#host.setShelf(withRow(this.#host.shelf(), key, row));
      this.#ledger.mark([key]);
      if ((stored?.rev ?? null) !== basedOn)
        conflicts.push({ table, id, mine: row, theirs: stored ?? 'gone' });
    }
    this.#settle(conflicts);
    this.touch([]);
  }

  /** No more saves: the storage is taken by somebody else. What is unsaved stays in the journal. */
  stop({ kind }: StorageFault): void {
    this.#storage = null;
    this.#fail(kind);
  }

  async #keepAll(): Promise<void> {
    this.#waitingSince = null;
    while (this.#storage && (!this.#ledger.isEmpty || this.#notesChanged)) {
      if (!this.#failure) this.#host.setSave({ state: 'saving' });
      const notesWaiting = this.#notesChanged;
      this.#notesChanged = false;
      const changes = this.#ledger.depart(this.#host.shelf());
      const result = await this.#storage.write(changes, isoTime(this.#host.now()), this.#host.notes());
      if (result.ok && result.value.outcome === 'kept') this.#arrive(changes, result.value.revs);
      else {
        this.#ledger.comeBack();
        this.#notesChanged ||= notesWaiting;
        if (!result.ok) return this.#fail(result.fault.kind);
        if (result.value.outcome === 'conflict') this.#settle(result.value.conflicts);
      }
      this.#writeJournal();
    }
    if (!this.#storage) return;
    this.#failure = null;
    this.#host.setSave({ state: 'saved' });
  }

  #arrive(changes: readonly Change[], revs: readonly (number | null)[]): void {
    let shelf = this.#host.shelf();
    for (const [index, change] of changes.entries()) {
      const rev = revs[index] ?? null;
      this.#ledger.setRev(change, rev);
      const row = rowAt(shelf, change);
      if (row && rev !== null) shelf = withRow(shelf, change, { ...row, rev });
    }
    this.#ledger.arrive();
    this.#host.setShelf(shelf);
    this.#host.onKept(changes);
  }

  #settle(conflicts: readonly Conflict[]): void {
    if (conflicts.length === 0) return;
    const settlements: Settlement[] = [];
    for (const conflict of conflicts) {
      const [shelf, settlement] = settleConflict(this.#host.shelf(), conflict, () => this.#host.newId());
      this.#host.setShelf(shelf);
      this.#ledger.setRev(settlement.key, settlement.rev);
      if (settlement.kind !== 'came-back') this.#ledger.unmark(settlement.key);
      if (settlement.copy) this.#ledger.mark([settlement.copy]);
      settlements.push(settlement);
    }
    this.#host.onSettled(settlements);
  }

  #fail(why: FaultKind): void {
    this.#failure = why;
    this.#host.setSave({ state: 'not-saved', why });
    clearTimeout(this.#timer);
    if (this.#storage) this.#keepIn(TRY_AGAIN_MS);
  }

  #keepSoon(): void {
    if (!this.#storage) return;
    if (!this.#failure) this.#host.setSave({ state: 'saving' });
    const now = this.#host.now();
    this.#waitingSince ??= now;
    this.#keepIn(Math.max(0, Math.min(AUTOSAVE_MS, this.#waitingSince + LONGEST_WAIT_MS - now)));
  }

  #keepIn(milliseconds: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.keepNow(), milliseconds);
  }

  #writeJournal(): void {
    const changes = this.#ledger.pending(this.#host.shelf());
    if (changes.length === 0) this.#host.journal.clear();
    else this.#host.journal.write({ changes, at: isoTime(this.#host.now()) });
  }
}
