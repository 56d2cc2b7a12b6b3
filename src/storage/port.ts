import type { AllRows, AnyRow, Quarantined, Rows, TableName } from '../../shared/tables';
import type { TracePicture } from '../core/trace';

export type { Quarantined };

/**
 * Why storage could not do what was asked. Work stays in memory and in the journal, and a file is offered.
 * - `full`: no room left. `slow`: no answer within five seconds; it may still have been kept.
 * - `stale`: a newer version of the app took the database over in another tab. `newer`: this app is older than the database.
 * - `blocked`: another tab holds an older version open; goes on by itself once that tab closes.
 * - `lost`: the connection broke and could not be made again. `unfetched`: its code did not come. `broken`: the database does not open. `absent`: the browser has none.
 */
export type FaultKind =
  | 'full'
  | 'slow'
  | 'stale'
  | 'newer'
  | 'blocked'
  | 'lost'
  | 'unfetched'
  | 'broken'
  | 'absent';

export interface StorageFault {
  readonly kind: FaultKind;
  /** The browser's own words, for a report; never the only thing a maker sees. */
  readonly detail: string;
  /** Where a database would not open for this app: what could be read of it, as it stands there, by table. Never written to. */
  readonly salvaged?: Readonly<Record<string, readonly unknown[]>>;
}

export type Result<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly fault: StorageFault };

/**
 * One row to keep or, `deleted`, to move to the bin as it stands here. `basedOn` is the revision it was made from; null for a row that is
 * not stored yet. Keeping a row that lies in the bin takes it out again.
 */
export interface Change<T extends TableName = TableName> {
  readonly table: T;
  readonly id: string;
  readonly row: Rows[T];
  readonly deleted: boolean;
  readonly basedOn: number | null;
  /** Deleted past the bin, where there is no room to keep it. */
  readonly forGood?: true | undefined;
}

/**
 * Something kept beside the rows. With `before`, as it was last seen here, only the fields in which the two differ are kept, over whatever
 * another tab kept in the others; without it, the value is kept whole.
 */
export interface NoteChange {
  readonly id: string;
  readonly value: unknown;
  readonly before?: unknown;
}

/** Notes by id as they stand, and how often rows were kept in this database. */
export interface KeptNotes {
  readonly notes: Readonly<Record<string, unknown>>;
  readonly generation: number;
}

/** The stored row is not the one a change was based on. `gone`: it was deleted; `unreadable`: it stands in quarantine. */
export interface Conflict {
  readonly table: TableName;
  readonly id: string;
  readonly theirs: AnyRow | 'gone' | 'unreadable';
}

/**
 * A write is kept whole or not at all: `kept` gives each row's new revision (null: in the bin) and the notes that were written as they are
 * now, `conflict` says that nothing was kept.
 */
export type Written =
  | ({ readonly outcome: 'kept'; readonly revs: readonly (number | null)[] } & KeptNotes)
  | { readonly outcome: 'conflict'; readonly conflicts: readonly Conflict[] };

/** A row in the bin. `id` is `table/row id`. */
export interface Binned {
  readonly id: string;
  readonly table: TableName;
  readonly row: AnyRow;
  readonly deletedAt: string;
  /** On how many days the app had been opened by then; left out by versions that did not count. */
  readonly onDay?: number | undefined;
}

/** An earlier state of a row. `id` is `table/row id@rev`, `of` is `table/row id`. */
export interface Snapshot {
  readonly id: string;
  readonly of: string;
  readonly table: TableName;
  readonly rev: number;
  readonly takenAt: string;
  /** As it was stored: what a migration copies may be older than today's schema. */
  readonly row: unknown;
  /** Kept because an update of the app was about to move the row, not because it was edited. */
  readonly before?: 'upgrade';
}

/** A row in the bin that today's schema cannot read: as it was stored. `id` is `table/row id`. */
export interface BinnedAside {
  readonly id: string;
  readonly table: TableName;
  readonly raw: unknown;
  readonly deletedAt: string;
}

/** A stored row as it is read now, or why it is still not read. */
type ReadAgain = AnyRow | 'gone' | Quarantined;

/** What was counted when something was last kept, noted in two places: a difference at the next start is loss. */
export interface Census {
  /** Grows by one with every write of rows. */
  readonly generation: number;
  readonly rows: number;
  readonly revSum: number;
}

/** Rows are missing or older than they were: what was last counted, and what is there. */
export interface Loss {
  readonly expected: Census;
  readonly found: Census;
}

/** Everything there is at the start. */
export interface Stored extends KeptNotes {
  readonly rows: AllRows;
  readonly quarantined: readonly Quarantined[];
  readonly loss: Loss | null;
}

export type StorageEvent =
  | {
      readonly event: 'changed-elsewhere';
      readonly keys: readonly { readonly table: TableName; readonly id: string }[];
      readonly notes: readonly string[];
      readonly generation: number;
    }
  | { readonly event: 'fault'; readonly fault: StorageFault };

/**
 * Where a workbook is kept. Everything answers with a value, also when it fails; nothing but `load` answers later than five seconds.
 * Two of these may stand on one database (two tabs); revisions are compared and written inside one transaction.
 */
export interface WorkbookStorage {
  /** `browser` outlives the tab; `memory` does not, and the maker is told. */
  readonly keeps: 'browser' | 'memory';
  /** However long it takes; `progress` hears how many rows of how many are read. */
  load(progress?: (read: number, of: number) => void): Promise<Result<Stored>>;
  /** All or nothing. `at`: ISO 8601, for the bin and the snapshots. `notes` are kept in the same transaction. */
  write(changes: readonly Change[], at: string, notes?: readonly NoteChange[]): Promise<Result<Written>>;
  readNotes(): Promise<Result<KeptNotes>>;
  /** Rows as they stand now, all in one go, in the order asked for; `gone` where there is none. */
  readRows(
    keys: readonly { readonly table: TableName; readonly id: string }[],
  ): Promise<Result<readonly (AnyRow | 'gone' | 'unreadable')[]>>;
  /** What lies in the bin and can be read, newest first. */
  listBin(): Promise<Result<readonly Binned[]>>;
  /**
   * The app was opened on this day (`YYYY-MM-DD`): empties the bin of what was deleted more than `keep` such days ago, whatever the clock
   * says now; returns how many.
   */
  openDay(day: string, keep: number): Promise<Result<number>>;
  /** Empties the bin; with `earlier`, forgets every earlier state as well. Needs no room. Returns how many things went. */
  freeRoom(earlier: boolean): Promise<Result<number>>;
  /** Earlier states of a row, newest first; at most 20. */
  listSnapshots(table: TableName, id: string): Promise<Result<readonly Snapshot[]>>;
  /** Earlier states of every row there ever was, newest first. */
  listAllSnapshots(): Promise<Result<readonly Snapshot[]>>;
  /** Reads a row that was set aside once more. */
  readAgain(table: TableName, id: string): Promise<Result<ReadAgain>>;
  /** Moves a row that cannot be read to the bin as it is; false if there is none, or if it can be read. */
  binAside(table: TableName, id: string, at: string): Promise<Result<boolean>>;
  /** Rows in the bin that cannot be read, newest first. */
  listBinAside(): Promise<Result<readonly BinnedAside[]>>;
  /** Puts a row that cannot be read back where it lay; false if it is not in the bin, or another stands in its place. */
  unbinAside(table: TableName, id: string): Promise<Result<boolean>>;
  /** Takes what is there as the truth after a loss was shown. */
  acceptLoss(): Promise<Result<null>>;
  /** Forgets everything: rows, bin, snapshots, notes. */
  eraseAll(): Promise<Result<null>>;
  /** Hears of changes made by other tabs and of faults between calls. Returns a function that stops it. */
  watch(listener: (event: StorageEvent) => void): () => void;
  close(): void;
}

/** One piece of unsaved work, written at every keystroke where it survives the tab. */
export interface Draft {
  readonly changes: readonly Change[];
  /** Of each change, the fields in which its row differs from the stored one it was made from; null where there was none, or it is not known. */
  readonly edits?: readonly (readonly unknown[] | null)[] | undefined;
  /** Earlier states of the same rows that were on their way, and may have been kept without the tab hearing of it. */
  readonly sent: readonly Change[];
  readonly at: string;
  /** Which of this tab's drafts it is: rows are kept with the number of the draft that held them, since a draft may outlive its rows. */
  readonly number?: number | undefined;
}

/** A draft of a tab now closed. Whoever takes it holds it until it is dropped, or left for another to take. */
export interface LeftBehind {
  readonly tab: string;
  readonly draft: Draft;
  readonly drop: () => void;
  readonly leave: () => void;
}

/** The unsaved work of this tab, in a place that is written at once. */
export interface Journal {
  /** False if there was no room. */
  write(draft: Draft): boolean;
  clear(): void;
  /** Its name among the tabs. */
  readonly tab: string;
  /** Drafts that tabs now closed left behind; each is handed to one tab only. */
  leftBehind(): Promise<readonly LeftBehind[]>;
  /** Tabs that have a draft there, living or not. */
  tabs(): readonly string[];
}

/** Pictures to draw over, by the box they lie under: kept on this device alone, and never among the rows. What can’t be done rejects. */
export interface TraceShelf {
  read(id: string): Promise<TracePicture | null>;
  keep(id: string, picture: TracePicture): Promise<void>;
  drop(id: string): Promise<void>;
  dropAll(): Promise<void>;
}
