import type { AnyRow } from '../../../shared/tables';
import type {
  Change,
  Conflict,
  Draft,
  FaultKind,
  Journal,
  StorageFault,
  WorkbookStorage,
} from '../../storage/port';
import { isoTime } from '../ports';
import { type RowKey, rowAt, type Shelf, withRow } from '../shelf';
import { Ledger } from './ledger';
import { type Settlement, settleConflict } from './settle-conflicts';

/** The last keystroke is kept this much later. Source: our own; 300 ms is promised. */
const AUTOSAVE_MS = 250;
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
  /** A conflict was settled; `copy`: where ours lives on, if it does so under another id. */
  onSettled(change: Change, settlement: Settlement, copy: RowKey | null): void;
  /** The storage is taken by somebody else, and no save will work any more. */
  onTaken(fault: StorageFault): void;
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

  /** These rows were changed, added or taken off since the shelf looked like `before`: in the journal now, kept soon. */
  touch(keys: readonly RowKey[], before: Shelf): void {
    for (const key of keys) this.#ledger.mark(key, rowAt(before, key));
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

  /** A stored row that could not be read before can be read now, and stands on the shelf. */
  found(key: RowKey, rev: number): void {
    this.#ledger.setRev(key, rev);
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
  takeOver({ changes, sent }: Pick<Draft, 'changes' | 'sent'>): void {
    for (const change of changes) {
      const rev = this.#ledger.revOf(change);
      const stored = rev === null ? null : rowAt(this.#host.shelf(), change);
      this.#host.setShelf(withRow(this.#host.shelf(), change, change.deleted ? null : change.row));
      this.#ledger.mark(change, change.row);
      if (rev === change.basedOn) continue;
      const theirs = stored && rev !== null ? { ...stored, rev } : 'gone';
      this.#settle([{ table: change.table, id: change.id, theirs }], sent);
    }
    this.#writeJournal();
    this.#keepSoon();
  }

  /** No more saves: the storage is taken by somebody else. What is unsaved stays in the journal. */
  stop(fault: StorageFault): void {
    this.#storage = null;
    this.#fail(fault.kind);
    this.#host.onTaken(fault);
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
        if (!result.ok) {
          if (result.fault.kind === 'stale') this.stop(result.fault);
          else this.#fail(result.fault.kind);
          return;
        }
        if (result.value.outcome === 'conflict') this.#settle(result.value.conflicts, this.#ledger.sent);
      }
      this.#writeJournal();
    }
    if (!this.#storage) return;
    this.#failure = null;
    this.#host.setSave({ state: 'saved' });
  }

  /** The rows on the shelf stay the objects they are, so that nothing made from them is made again; the ledger knows their revisions. */
  #arrive(changes: readonly Change[], revs: readonly (number | null)[]): void {
    for (const [index, change] of changes.entries()) this.#ledger.setRev(change, revs[index] ?? null);
    this.#ledger.arrive();
    this.#host.onKept(changes);
  }

  #settle(conflicts: readonly Conflict[], sent: readonly Change[]): void {
    for (const conflict of conflicts) {
      const change = this.#ledger.changeOf(conflict, this.#host.shelf());
      if (!change) continue;
      const settlement = settleConflict(change, conflict, sent);
      this.#ledger.setRev(change, settlement.rev);
      if (settlement.way !== 'goOn') this.#ledger.unmark(change);
      const copy = settlement.way === 'copy' ? this.#copyAside(change, settlement.theirs) : null;
      this.#host.onSettled(change, settlement, copy);
    }
  }

  /** Theirs takes the place of ours, and ours one of its own. */
  #copyAside(change: Change, theirs: AnyRow | null): RowKey {
    const copy = { table: change.table, id: this.#host.newId() };
    const row = { ...change.row, id: copy.id, rev: 0 };
    const shelf = withRow(this.#host.shelf(), change, theirs);
    this.#host.setShelf(change.deleted ? shelf : withRow(shelf, copy, row));
    this.#ledger.mark(copy, row);
    return copy;
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
    else this.#host.journal.write({ changes, sent: this.#ledger.sent, at: isoTime(this.#host.now()) });
  }
}
