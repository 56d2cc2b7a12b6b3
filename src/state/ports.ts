import type { Journal, Result, WorkbookStorage } from '../storage/port';

/** What the state needs of the world around it; the app wires the browser's, tests wire their own. */
export interface WorkbookPorts {
  /** Opens what the workbook is kept in; `onBlocked` is called while another tab with an older version holds it. */
  openStorage(onBlocked: () => void): Promise<Result<WorkbookStorage>>;
  /** Where there is nothing else: kept until the tab closes. */
  openMemory(): WorkbookStorage;
  readonly journal: Journal;
  /** Milliseconds since 1970. */
  now(): number;
  /** A new id, `^[a-z0-9-]{1,64}$`. */
  newId(): string;
  /** Asks the browser not to clear our storage by itself; null where it cannot be asked. */
  askToPersist(): Promise<boolean | null>;
}

export const isoTime = (milliseconds: number): string => new Date(milliseconds).toISOString();
