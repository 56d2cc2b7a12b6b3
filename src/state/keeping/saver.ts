import { type AnyRow, readRow } from '../../../shared/tables';
import type {
  Change,
  Conflict,
  Draft,
  FaultKind,
  Journal,
  KeptNotes,
  NoteChange,
  StorageFault,
  WorkbookStorage,
} from '../../storage/port';
import { isoTime } from '../ports';
import { keyText, type RowKey, rowAt, type Shelf, ShelfDraft, withRow } from '../shelf';
import { compareRows, contentIsSame, isFieldChange, setFields } from './field-changes';
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
  /** What is kept beside the rows in the same transaction; `kept` hears when it is. */
  notes(): { readonly changes: readonly NoteChange[]; readonly kept: () => void };
  onKept(changes: readonly Change[], notes: KeptNotes): void;
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
  /** Rows that another tab kept, not read yet. */
  readonly #heardOf = new Map<string, RowKey>();
  #refreshing = false;
  /** Of the drafts of this tab. */
  #number = 0;

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

  /** What is not kept, as it would be kept. */
  unsaved(): readonly Change[] {
    return this.#ledger.pending(this.#host.shelf());
  }

  /** A stored row that could not be read before can be read now, and stands on the shelf. */
  found(key: RowKey, row: AnyRow): void {
    this.#ledger.setStored(key, row);
  }

  /**
   * Another tab kept these rows: shows what it kept, unless there is unsaved work in them here (which then meets it when kept). However many
   * there are and however often it is called, they are read in one go and shown in one.
   */
  async refresh(keys: readonly RowKey[]): Promise<void> {
    for (const key of keys) this.#heardOf.set(keyText(key), key);
    if (this.#refreshing) return;
    this.#refreshing = true;
    while (this.#storage && this.#heardOf.size > 0) {
      const asked = [...this.#heardOf.values()];
      this.#heardOf.clear();
      const read = await this.#storage.readRows(asked);
      if (!read.ok) {
        for (const key of asked) this.#heardOf.set(keyText(key), key);
        break;
      }
      const shelf = new ShelfDraft(this.#host.shelf());
      for (const [at, key] of asked.entries()) {
        const found = read.value[at];
        if (found === undefined || found === 'unreadable' || this.#ledger.isUnsaved(key)) continue;
        const row = found === 'gone' ? null : found;
        if (row && row.rev <= (this.#ledger.storedOf(key)?.rev ?? -1)) continue;
        this.#ledger.setStored(key, row);
        shelf.set(key, row);
      }
      this.#host.setShelf(shelf.done());
    }
    this.#refreshing = false;
  }

  /**
   * Work that another tab left behind: comes onto the shelf as unsaved work, beside what was kept since where the two clash. `took`: not all of
   * it was there already. `noted`: this tab's own journal holds it now, so that the draft it came from may go.
   */
  takeOver({ changes, sent, edits }: Draft): { readonly took: boolean; readonly noted: boolean } {
    let took = false;
    for (const [at, change] of changes.entries()) {
      const stored = this.#ledger.storedOf(change);
      if (change.deleted ? !stored : stored && contentIsSame(stored, change.row)) continue;
      took = true;
      this.#host.setShelf(withRow(this.#host.shelf(), change, change.deleted ? null : change.row));
      this.#ledger.mark(change, change.row);
      if ((stored?.rev ?? null) === change.basedOn) continue;
      const base = baseOf(change, edits?.[at] ?? null);
      this.#settle([{ table: change.table, id: change.id, theirs: stored ?? 'gone' }], sent, base);
    }
    const noted = this.#writeJournal();
    this.#keepSoon();
    return { took, noted };
  }

  /** Deletes for good what was deleted here and found no room in the bin; then keeps the rest. */
  async forGood(): Promise<void> {
    const gone = this.unsaved().flatMap((change): Change[] =>
      change.deleted ? [{ ...change, forGood: true }] : [],
    );
    const written = await this.#storage?.write(gone, isoTime(this.#host.now()));
    if (written?.ok && written.value.outcome === 'kept')
      for (const change of gone) {
        this.#ledger.setStored(change, null);
        this.#ledger.unmark(change);
      }
    await this.keepNow();
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
      const notes = this.#host.notes();
      // Which draft these rows are: should it outlive them, it is known for what it is.
      const draft = changes.length > 0 && { id: draftNote(this.#host.journal.tab), value: this.#number };
      const result = await this.#storage.write(changes, isoTime(this.#host.now()), [
        ...notes.changes,
        ...(draft ? [draft] : []),
      ]);
      if (result.ok && result.value.outcome === 'kept') {
        notes.kept();
        this.#arrive(changes, result.value.revs, result.value);
      } else {
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
  #arrive(changes: readonly Change[], revs: readonly (number | null)[], notes: KeptNotes): void {
    for (const [index, change] of changes.entries()) {
      const rev = revs[index] ?? null;
      this.#ledger.setStored(change, rev === null ? null : { ...change.row, rev });
    }
    this.#ledger.arrive();
    this.#host.onKept(changes, notes);
  }

  /** `base`: what both sides began from, where it is not what this tab last saw stored. */
  #settle(conflicts: readonly Conflict[], sent: readonly Change[], base?: AnyRow | null): void {
    for (const conflict of conflicts) {
      const change = this.#ledger.changeOf(conflict, this.#host.shelf());
      if (!change) continue;
      const from = base === undefined ? this.#ledger.storedOf(change) : base;
      const settlement = settleConflict(change, conflict, from, sent);
      const { way, theirs, merged } = settlement;
      this.#ledger.setStored(change, theirs);
      if (merged) this.#host.setShelf(withRow(this.#host.shelf(), change, merged));
      if (way === 'drop' || way === 'copy') this.#ledger.unmark(change);
      const copy = way === 'copy' ? this.#copyAside(change, theirs) : null;
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

  /** Whether the journal now says what is unsaved here. */
  #writeJournal(): boolean {
    const changes = this.#ledger.pending(this.#host.shelf());
    if (changes.length === 0) {
      this.#host.journal.clear();
      return true;
    }
    const edits = changes.map((change) => {
      const stored = change.deleted ? null : this.#ledger.storedOf(change);
      return stored && compareRows(stored, change.row);
    });
    const at = isoTime(this.#host.now());
    return this.#host.journal.write({ changes, edits, sent: this.#ledger.sent, at, number: ++this.#number });
  }
}

/** The note that says which draft of a tab was kept last. */
export const draftNote = (tab: string): string => `draft ${tab}`;

/** The stored row that a draft's row was made from; null where its fields do not give one. */
function baseOf({ table, row }: Change, edits: readonly unknown[] | null): AnyRow | null {
  const fields = edits?.filter(isFieldChange);
  if (!fields || fields.length !== edits?.length) return null;
  const reading = readRow(table, setFields(row, fields, 'before'));
  return reading.ok ? reading.row : null;
}
