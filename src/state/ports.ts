import type { Settings } from '../../shared/settings';
import type { FavorEvent } from '../../shared/workbook';
import type { Journal, Result, TraceShelf, WorkbookStorage } from '../storage/port';
import type { Joined, OnMany } from './keeping/exchange';
import type { RowChange } from './keeping/steps';
import type { Sharing, SharingDesk } from './sharing';
import type { RowKey } from './shelf';
import type { Counted, ShownEvent } from './shown-event';

/** What the browser says of the place our work is kept in; null wherever it does not tell. */
export interface StorageFacts {
  /** Whether it promised not to clear it by itself. */
  readonly persisted: boolean | null;
  readonly usedBytes: number | null;
  readonly roomBytes: number | null;
}

/**
 * Why a folder did not take a file. `forbidden`: the maker must allow it once more; `gone`: moved or deleted; `full`: no room on the disk;
 * `fewer`: the copy would hold far less than the last one, and the maker is asked first.
 */
export type FolderTrouble = 'forbidden' | 'gone' | 'full' | 'failed' | 'fewer';

/** What the browser gives for a folder: kept in the database as it is, never looked into. */
export type FolderHandle = object;

/** The way into folders of the maker's own, outside the browser's storage. */
export interface FolderDoor {
  /** Lets them choose one, which must follow a press; null if they changed their mind. */
  pick(): Promise<{ readonly handle: FolderHandle; readonly name: string } | null>;
  /** Whether files may be written there; asks them if `ask`, which must follow a press. */
  mayWrite(handle: FolderHandle, ask: boolean): Promise<boolean>;
  /** The names of the files there; null if it cannot be looked into. */
  list(handle: FolderHandle): Promise<readonly string[] | null>;
  /** The text of a file there; null if it cannot be read. */
  read(handle: FolderHandle, name: string): Promise<string | null>;
  /** Takes a file away; one that is not there, or cannot be taken away, stays as it is. */
  drop(handle: FolderHandle, name: string): Promise<void>;
  /** Puts a file there, in the place of one of that name, whole or not at all; null: done. */
  write(handle: FolderHandle, name: string, text: string): Promise<FolderTrouble | null>;
}

/** A row as it stands now that another device changed it; null: deleted there. Not read yet. */
export interface ComingRow extends RowKey {
  readonly row: unknown;
}

/**
 * Whatever carries rows between devices of the maker’s, from the moment it has heard what the others did until its line breaks. It holds
 * every row as one map of fields, and a named size or option as a field of its own.
 */
export interface Exchange {
  /** What was changed here, once it is kept. */
  tell(changes: readonly RowChange[]): void;
  /** Hears of rows that others changed. Returns a function that stops it. */
  watch(listener: (rows: readonly ComingRow[]) => void): () => void;
  /** Every row as both sides knew it when this device was last joined and had kept everything. */
  agreed(): readonly ComingRow[];
  /** Everything it holds, at the start. */
  all(): readonly ComingRow[];
  /** One row as it holds it now; null if it holds none. */
  now(key: RowKey): ComingRow | null;
}

/** How the state lets an exchange in. */
export interface ExchangeDoor {
  readonly join: (exchange: Exchange, onMany: OnMany, asks: (deletions: number) => void) => Joined;
  /** Shows how sharing stands; null: nothing is shared. */
  readonly show: (sharing: Sharing | null) => void;
  readonly event: (id: string) => FavorEvent | undefined;
  /** What a link to this event shows; null: there is no such event. */
  readonly shows: (eventId: string, kind: 'bench' | 'class', unit: 'in' | 'mm') => ShownEvent | null;
  /** Lays in what helpers counted; what they counted before never goes. */
  readonly count: (eventId: string, counts: readonly Counted[]) => void;
  /** Hears of every row that was kept, here or in another tab. Returns a function that stops it. */
  readonly watch: (listener: () => void) => () => void;
}

/** What the state needs of the world around it; the app wires the browser's, tests wire their own. */
export interface WorkbookPorts {
  /** Opens what the workbook is kept in; `onBlocked` is called while another tab with an older version holds it. */
  openStorage(onBlocked: () => void): Promise<Result<WorkbookStorage>>;
  /** Where there is nothing else: kept until the tab closes. */
  openMemory(): WorkbookStorage | Promise<WorkbookStorage>;
  readonly journal: Journal;
  /** Where pictures to draw over are kept, fetched when it is first wanted; absent: nowhere. */
  readonly traces?: () => Promise<TraceShelf>;
  /** Erases what is kept beside the workbook: pictures to draw over, and links that were opened here; absent: nothing is. */
  readonly eraseBeside?: () => Promise<void>;
  /** Unit and currency before any are chosen; without them, those of the United States. */
  readonly firstSettings?: Settings;
  /** Milliseconds since 1970. */
  now(): number;
  /** A new id, `^[a-z0-9-]{1,64}$`. */
  newId(): string;
  /** Asks the browser not to clear our storage by itself; null where it cannot be asked. */
  askToPersist(): Promise<boolean | null>;
  readonly storageFacts?: () => Promise<StorageFacts>;
  /** Fetched when it is first wanted; null where the browser has no such door. */
  readonly folderDoor?: () => Promise<FolderDoor | null>;
  /** Does this while no other tab does anything of the same name; absent: there are no other tabs. */
  readonly alone?: (name: string, work: () => Promise<void>) => Promise<void>;
  /** Fetched after the start where rows are shared, and joins again whenever its line comes back; absent: rows stay on this device. */
  readonly sharing?: {
    readonly isShared: () => boolean;
    readonly open: (door: ExchangeDoor) => Promise<SharingDesk | null>;
  };
}

export const isoTime = (milliseconds: number): string => new Date(milliseconds).toISOString();
