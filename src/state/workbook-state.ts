import type { Settings } from '../../shared/settings';
import type { Rows, TableName } from '../../shared/tables';
import type { WorkbookFile } from '../../shared/workbook';
import type { Refusal } from '../core/rows/refusals';
import type { Binned, Loss, Quarantined, Result, Snapshot, StorageFault, TraceShelf } from '../storage/port';
import type { Content } from './intents/first-rows';
import type { ImportPlan } from './intents/import-plan';
import type { BackupFolder } from './keeping/folder-backup';
import type { History } from './keeping/history';
import type { Keeping } from './keeping/keeping';
import type { BackupNote, BackupPlace } from './keeping/notes';
import type { SaveState } from './keeping/saver';
import type { Step } from './keeping/steps';
import type { Sharing, SharingDesk } from './sharing';
import type { RowKey, Shelf } from './shelf';

/**
 * - `opening`; `blocked`: still opening, another tab with an older version must close first.
 * - `ready`: work. `lossFound`: work is possible, but rows are missing: ask first (`acceptLoss`).
 * - `stopped`: nothing is written any more; `fault` says why. What is on the shelf can be looked at and exported.
 */
type Phase =
  | { readonly phase: 'opening'; readonly read?: number; readonly of?: number }
  | { readonly phase: 'blocked' | 'ready' }
  | { readonly phase: 'lossFound'; readonly loss: Loss }
  | { readonly phase: 'stopped'; readonly fault: StorageFault };

/** Something that happened without being asked for, or that can be undone; shown until dismissed. */
export interface Notice {
  readonly key: number;
  readonly code:
    | 'deleted'
    | 'copied'
    | 'keptBoth'
    | 'cameBack'
    | 'stayed'
    | 'draftRestored'
    | 'imported'
    | 'backupDue'
    | 'exampleStays'
    | 'heldApart'
    | 'exchangeStopped'
    | 'changedSince'
    | 'backupMade'
    | 'backupOfRest'
    | 'backupOfTab'
    | 'fileNotWritten';
  /** The name of the row it is about, or a count. */
  readonly about: string;
  /** What it tells of, if that can be taken back from the notice. */
  readonly step?: Step;
}

/** Inputs only. Results (nets, checks, plans) are selectors in files of their own. */
export interface WorkbookData {
  readonly phase: Phase;
  readonly rows: Shelf;
  readonly settings: Settings;
  readonly save: SaveState;
  /** `memory`: gone when the tab closes; warn for as long as it is so. */
  readonly keeps: 'browser' | 'memory';
  /** Whether the browser promised not to clear our storage by itself; null: not asked yet, or it does not tell. */
  readonly persisted: boolean | null;
  readonly backup: BackupNote;
  /** Rows that today's schema cannot read, as they lie. */
  readonly quarantined: readonly Quarantined[];
  /** Everything that could be read of a database that did not open as ours, by table, as it lies there; else null. */
  readonly salvaged: Readonly<Record<string, readonly unknown[]>> | null;
  /** The folder that gets a copy of everything by itself; null: none was picked. */
  readonly folder: BackupFolder | null;
  /** How this shelf stands with other devices; null: it is on this one alone. */
  readonly sharing: Sharing | null;
  readonly notices: readonly Notice[];
  readonly history: History;
  /** Nothing was ever kept or made in this browser. */
  readonly fresh: boolean;
}

/** Reasons why nothing was done; none if it was. */
export type Refusals = readonly Refusal[];
export type Made =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly refusals: Refusals };

export type MadeAll =
  | { readonly ok: true; readonly ids: readonly string[] }
  | { readonly ok: false; readonly refusals: Refusals };

/** A row to be made with others, which it may name by their ids. */
export type NewRow = {
  [T in TableName]: { readonly table: T; readonly content: (made: readonly string[]) => Content<T> };
}[TableName];

/** A change of one row of any table. */
export type RowEdit = {
  [T in TableName]: {
    readonly table: T;
    readonly id: string;
    readonly change: (row: Rows[T]) => Rows[T];
  };
}[TableName];

export interface WorkbookIntents {
  /** Opens the storage and loads everything; called once. */
  readonly boot: () => Promise<void>;
  /** Changes one row as one undo step (typing on within a second, under the same label in the same fields, lengthens the step). */
  readonly edit: <T extends TableName>(
    table: T,
    id: string,
    label: string,
    change: (row: Rows[T]) => Rows[T],
  ) => Refusals;
  /** Changes several rows as one undo step; all of them, or none. */
  readonly editTogether: (label: string, edits: readonly RowEdit[]) => Refusals;
  readonly create: <T extends TableName>(table: T, content: Content<T>, label: string) => Made;
  /** Several rows of one table as one undo step; all of them, or none. */
  readonly createAll: <T extends TableName>(
    table: T,
    contents: readonly Content<T>[],
    label: string,
  ) => MadeAll;
  /** Rows of several tables as one undo step; each is told the ids of those before it. All of them, or none. */
  readonly createTogether: (label: string, parts: readonly NewRow[]) => MadeAll;
  readonly createRecipe: (
    given: Pick<Content<'recipes'>, 'name' | 'styleId'> & Partial<Content<'recipes'>>,
  ) => Made;
  readonly createEvent: (given: Pick<Content<'events'>, 'name'> & Partial<Content<'events'>>) => Made;
  /** A copy under the name `name`. */
  readonly duplicate: (key: RowKey, name: string) => Made;
  /** Into the bin, for thirty days on which the app is opened; undo takes it out again. */
  readonly remove: (key: RowKey) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** A text field's own undo put a text back: what was typed and taken back there is no step of the maker’s. */
  readonly typedBack: () => void;
  /** Takes back what a notice tells of and nothing else: undoes it if nothing came after, else as a new step. */
  readonly takeBack: (noticeKey: number) => void;
  readonly changeSettings: (change: Partial<Settings>) => Refusals;
  readonly dismiss: (noticeKey: number) => void;

  /** What reading a file in would do; `importPlanned` does it, as one undo step. */
  readonly planImport: (file: WorkbookFile) => ImportPlan;
  readonly importPlanned: (plan: ImportPlan, label: string) => void;
  /** Puts the example on the shelf: no step to undo, and its event and recipes stay as they are until `makeMine`. */
  readonly placeExample: (plan: ImportPlan) => void;
  /** Whether nothing was made in this browser yet, in whatever tab. */
  readonly isStillFresh: () => Promise<boolean>;
  /** What is there as an example becomes the maker's own, as one undo step. */
  readonly makeMine: () => void;
  /** A recipe or an event with all it needs, or everything; null if there is no such row. */
  readonly exportFile: (
    what: { readonly kind: 'recipe' | 'event'; readonly id: string } | { readonly kind: 'everything' },
  ) => WorkbookFile | null;
  /** A file with everything has been put outside the browser. */
  readonly noteBackup: (where?: BackupPlace, holds?: { generation?: number; rows?: number }) => void;

  readonly listBin: () => Promise<Result<readonly Binned[]>>;
  readonly restoreFromBin: (binned: Binned) => Refusals;
  readonly listSnapshots: (key: RowKey) => Promise<Result<readonly Snapshot[]>>;
  readonly restoreSnapshot: (snapshot: Snapshot) => Refusals;

  /** Keeps everything now; for leaving a page, and before an update of the app. */
  readonly keepNow: () => Promise<void>;
  readonly acceptLoss: () => Promise<void>;
  /** After a fault at the start: work in memory, with the warning that goes with it. */
  readonly carryOnInMemory: () => void;
  readonly eraseEverything: () => Promise<Result<null>>;
  /** What only the page of safe keeping needs, fetched with it. */
  readonly keeping: () => Promise<Keeping>;
  /** Pictures to draw over, kept on this device alone. Rejects where they can’t be kept. */
  readonly traces: () => Promise<TraceShelf>;
  /** What sharing with other devices can do, fetched when it is first asked for; null where the app has no way to it. */
  readonly sharingDesk: () => Promise<SharingDesk | null>;
}

export type WorkbookState = WorkbookData & WorkbookIntents;
