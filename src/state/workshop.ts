import type { StoreApi } from 'zustand/vanilla';
import type { Change, WorkbookStorage } from '../storage/port';
import { dropStep, moveStep, nextStep, recordStep, renameRow } from './keeping/history';
import { type BackupPlace, backupIsDue } from './keeping/notes';
import { Saver } from './keeping/saver';
import type { Settlement } from './keeping/settle-conflicts';
import { changesBack, isSameStep, type RowChange, type Step, takeStep } from './keeping/steps';
import { isoTime, type WorkbookPorts } from './ports';
import { keyText, type RowKey } from './shelf';
import type { Notice, WorkbookData, WorkbookState } from './workbook-state';

/** How many steps outlive a reload, and the largest step that does. Source: our own. */
const STEPS_KEPT = 50;
const ROWS_IN_A_KEPT_STEP = 20;

/** What the intents of the store share: the saver, the undo list, and the way from one to the other. */
export class Workshop {
  readonly ports: WorkbookPorts;
  readonly saver: Saver;
  readonly #store: Pick<StoreApi<WorkbookState>, 'getState' | 'setState'>;
  storage: WorkbookStorage | null = null;
  /** Who hears of every save of rows. */
  readonly afterKept = new Set<(keys: readonly RowKey[]) => void>();
  #noticeKey = 0;
  #madeSomething = false;
  #askedToPersist = false;
  #nudged = false;

  constructor(ports: WorkbookPorts, store: Pick<StoreApi<WorkbookState>, 'getState' | 'setState'>) {
    this.ports = ports;
    this.#store = store;
    this.saver = new Saver({
      journal: ports.journal,
      now: () => ports.now(),
      newId: () => ports.newId(),
      shelf: () => this.state.rows,
      setShelf: (rows) => this.set({ rows }),
      setSave: (save) => this.set({ save }),
      notes: () => this.#notes(),
      onKept: (changes) => this.#onKept(changes),
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
      if (rows) {
        const notices = this.state.notices.filter(({ step: told }) => !told || !isSameStep(told, step));
        this.set({ rows, history: moveStep(this.state.history, way), notices });
        this.saver.touch(step.changes, before);
        return;
      }
      this.set({ history: dropStep(this.state.history, way) });
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

  /** Everything is in a file outside the browser now. */
  noteBackup(where?: BackupPlace): void {
    this.set({ backup: { at: isoTime(this.ports.now()), savesSince: 0, ...(where && { where }) } });
    this.saver.touchNotes();
  }

  notify(code: Notice['code'], about: string, step?: Step): void {
    if (code === 'exampleStays' && this.state.notices.some((notice) => notice.code === code)) return;
    this.set({
      notices: [...this.state.notices, { key: ++this.#noticeKey, code, about, ...(step && { step }) }],
    });
  }

  #notes(): Readonly<Record<string, unknown>> {
    const { settings, backup, history } = this.state;
    const small = (steps: typeof history.done) => {
      const kept = steps.slice(-STEPS_KEPT);
      const tooLarge = kept.findLastIndex(({ changes }) => changes.length > ROWS_IN_A_KEPT_STEP);
      return kept.slice(tooLarge + 1);
    };
    return { settings, backup, history: { done: small(history.done), undone: small(history.undone) } };
  }

  #onKept(changes: readonly Change[]): void {
    if (changes.length === 0) return;
    const { backup } = this.state;
    const counted = { ...backup, savesSince: backup.savesSince + 1 };
    this.set({ backup: counted });
    for (const hear of this.afterKept) hear(changes);
    if (!this.#nudged && backupIsDue(counted, this.ports.now())) {
      this.#nudged = true;
      this.notify('backupDue', `${counted.savesSince}`);
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
