import type { StoreApi } from 'zustand/vanilla';
import type { Change, KeptNotes, WorkbookStorage } from '../storage/port';
import { dropStep, moveStep, nextStep, recordStep, renameRow } from './keeping/history';
import { type BackupPlace, backupIsDue, backupSince, type KeptBackup, readBackupNote } from './keeping/notes';
import { NotesHere } from './keeping/notes-here';
import { Saver } from './keeping/saver';
import type { Settlement } from './keeping/settle-conflicts';
import { changedSince, changesBack, isSameStep, type RowChange, type Step, takeStep } from './keeping/steps';
import { isoTime, type WorkbookPorts } from './ports';
import { keyText, type RowKey } from './shelf';
import type { Notice, WorkbookData, WorkbookState } from './workbook-state';

/** What the intents of the store share: the saver, the undo list, and the way from one to the other. */
export class Workshop {
  readonly ports: WorkbookPorts;
  readonly saver: Saver;
  readonly #store: Pick<StoreApi<WorkbookState>, 'getState' | 'setState'>;
  storage: WorkbookStorage | null = null;
  /** Who hears of every save of rows. */
  readonly afterKept = new Set<(keys: readonly RowKey[]) => void>();
  /** Who hears of rows that another tab kept, once they are on the shelf here. */
  readonly afterOthersKept = new Set<(keys: readonly RowKey[]) => void>();
  readonly #notes: NotesHere;
  /** How often rows were kept in the database, as far as this tab has heard. */
  #generation = 0;
  #noticeKey = 0;
  #madeSomething = false;
  #askedToPersist = false;
  #nudged = false;

  constructor(ports: WorkbookPorts, store: Pick<StoreApi<WorkbookState>, 'getState' | 'setState'>) {
    this.ports = ports;
    this.#store = store;
    this.#notes = new NotesHere(() => this.state);
    this.saver = new Saver({
      journal: ports.journal,
      now: () => ports.now(),
      newId: () => ports.newId(),
      shelf: () => this.state.rows,
      setShelf: (rows) => this.set({ rows, fresh: false }),
      setSave: (save) => this.set({ save }),
      notes: () => this.#notes.departing(),
      onKept: (changes, { generation }) => this.#onKept(changes, generation),
      onSettled: (change, settlement, copy) => this.#onSettled(change, settlement, copy),
      onTaken: (fault) => this.set({ phase: { phase: 'stopped', fault } }),
    });
  }

  get state(): WorkbookState {
    return this.#store.getState();
  }

  set(data: Partial<WorkbookData>): void {
    this.#store.setState(data);
  }

  /** Does something new, as one step that undo takes back. Null if it did not fit. */
  take(label: string, changes: readonly RowChange[]): Step | null {
    const at = this.ports.now();
    const step = { label, changes, at };
    const before = this.state.rows;
    const rows = takeStep(before, step, 'redo', isoTime(at));
    if (!rows) return null;
    this.set({ rows, history: recordStep(this.state.history, step), fresh: false });
    this.#madeSomething = true;
    this.saver.touch(changes, before);
    return step;
  }

  /** Puts rows on the shelf without a step that could be taken back. */
  place(changes: readonly RowChange[]): void {
    const at = this.ports.now();
    const before = this.state.rows;
    const rows = takeStep(before, { label: '', changes, at }, 'redo', isoTime(at));
    if (!rows) return;
    this.set({ rows, fresh: false });
    this.saver.touch(changes, before);
  }

  /** Takes back the last step, or does the next one again; steps that no longer fit are passed over. */
  move(way: 'undo' | 'redo'): void {
    for (;;) {
      const step = nextStep(this.state.history, way);
      if (!step) return;
      const before = this.state.rows;
      const rows = takeStep(before, step, way, isoTime(this.ports.now()));
      const [stays] = changedSince(before, step, way);
      if (stays !== undefined) this.notify('changedSince', stays);
      if (rows) {
        const notices = this.state.notices.filter(({ step: told }) => !told || !isSameStep(told, step));
        this.set({ rows, history: moveStep(this.state.history, way), notices });
        this.saver.touch(step.changes, before);
        return;
      }
      this.set({ history: dropStep(this.state.history, way) });
      if (stays !== undefined) return;
    }
  }

  /** Takes one step back and no other: undone if it is the newest, else as a new step. */
  takeBack(step: Step, label: string): void {
    const newest = nextStep(this.state.history, 'undo');
    if (newest && isSameStep(newest, step)) {
      this.move('undo');
      return;
    }
    const changes = changesBack(this.state.rows, step);
    if (changes.length > 0) this.take(label, changes);
  }

  /** What was found beside the rows at the start, now that it is on the page. */
  startNotes({ notes, generation }: KeptNotes): void {
    this.#notes.start(readBackupNote(notes['backup']));
    this.#heardOfSaves(generation, true);
  }

  /** Another tab kept something beside the rows, or only rows (`notes` is empty). */
  async hearNotes(notes: readonly string[], generation: number): Promise<void> {
    const kept = notes.length > 0 ? await this.storage?.readNotes() : null;
    if (kept?.ok) this.set({ settings: this.#notes.hear(kept.value) });
    this.#heardOfSaves(kept?.ok ? kept.value.generation : generation);
  }

  /** Everything is in a file outside the browser, as it was when rows had been kept `generation` times. */
  noteBackup(where?: BackupPlace, { generation = this.#generation, rows = 0 } = {}): void {
    const at = isoTime(this.ports.now());
    if (generation < this.#notes.backup.generation) return;
    this.#notes.backup = { at, generation, ...(where && { where }), ...(rows > 0 && { rows }) };
    this.#heardOfSaves(this.#generation);
    this.saver.touchNotes();
  }

  get lastBackup(): KeptBackup {
    return this.#notes.backup;
  }

  #heardOfSaves(generation: number, anew = false): void {
    this.#generation = anew ? generation : Math.max(this.#generation, generation);
    this.set({ backup: backupSince(this.#notes.backup, this.#generation) });
  }

  notify(code: Notice['code'], about: string, step?: Step): void {
    if (code === 'exampleStays' && this.state.notices.some((notice) => notice.code === code)) return;
    this.set({
      notices: [...this.state.notices, { key: ++this.#noticeKey, code, about, ...(step && { step }) }],
    });
  }

  #onKept(changes: readonly Change[], generation: number): void {
    this.#heardOfSaves(generation);
    if (changes.length === 0) return;
    const { backup } = this.state;
    for (const hear of this.afterKept) hear(changes);
    if (!this.#nudged && backupIsDue(backup, this.ports.now())) {
      this.#nudged = true;
      this.notify('backupDue', `${backup.savesSince}`);
    }
    // An example that was put there unasked is nothing to ask a promise for.
    if (this.#askedToPersist || !this.#madeSomething) return;
    this.#askedToPersist = true;
    void this.ports.askToPersist().then((persisted) => this.set({ persisted }));
  }

  #onSettled(change: Change, { notice }: Settlement, copy: RowKey | null): void {
    if (copy) this.set({ history: renameRow(this.state.history, keyText(change), copy.id) });
    if (notice) this.notify(notice, change.row.name);
  }
}
