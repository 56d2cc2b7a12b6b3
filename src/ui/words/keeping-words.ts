import { createContext, use } from 'react';
import type { TableName } from '../../../shared/tables';
import type { Count, Naming, Texts } from './texts';

/** What the page says of one moment; `now` in milliseconds. */
type Moment = (at: string, now: number) => string;

/** The texts of the page of safe keeping. */
export interface KeepingWords
  extends Texts<
    | 'title'
    | 'why'
    | 'toShelf'
    | 'here'
    | 'inMemory'
    | 'promise'
    | 'promised'
    | 'notPromised'
    | 'promiseUnknown'
    | 'askPromise'
    | 'askedInVain'
    | 'room'
    | 'roomUnknown'
    | 'onShelf'
    | 'earlierKept'
    | 'copies'
    | 'copiesWhy'
    | 'noCopyYet'
    | 'makeCopy'
    | 'making'
    | 'restore'
    | 'restoreWhy'
    | 'takeIn'
    | 'leaveIt'
    | 'refused'
    | 'inParts'
    | 'folder'
    | 'folderWhy'
    | 'noFolders'
    | 'pickFolder'
    | 'otherFolder'
    | 'allowFolder'
    | 'writeNow'
    | 'writeAnyway'
    | 'stopFolder'
    | 'folderNothingYet'
    | 'aside'
    | 'asideWhy'
    | 'tryAgain'
    | 'intoBin'
    | 'saveAsIs'
    | 'asideFile'
    | 'salvageFile'
    | 'salvaged'
    | 'earlier'
    | 'earlierWhy'
    | 'noEarlier'
    | 'bringBeside'
    | 'beforeUpgrade'
    | 'unreadable'
    | 'notHere'
    | 'likeNow'
    | 'bin'
    | 'binWhy'
    | 'binEmpty'
    | 'takeOut'
    | 'erase'
    | 'eraseWhy'
    | 'eraseStart'
    | 'eraseHelp'
    | 'eraseWord'
    | 'eraseNow'
    | 'eraseLeave'
    | 'emptyBin'
    | 'forgetEarlier'
    | 'forgetEarlierSure'
    | 'earlierForgotten'
    | 'erased'
    | 'notErased'
    | 'notListed'
  > {
  readonly roomUsed: (usedBytes: number, roomBytes: number | null) => string;
  readonly counts: (counts: Readonly<Record<TableName, number>>) => string;
  readonly statesOf: (states: number, rows: number) => string;
  readonly lastCopy: (when: string, how: 'download' | 'folder' | null, name: string) => string;
  readonly savesSince: Count;
  readonly notAside: Count;
  readonly when: Moment;
  readonly day: Naming;
  readonly file: (number: number, of: number, name: string) => string;
  readonly fates: Readonly<Record<'new' | 'differs' | 'same', Count>>;
  readonly nothingNew: string;
  readonly thing: (table: TableName, name: string) => string;
  readonly differsIn: (fields: readonly string[]) => string;
  readonly goesInto: Naming;
  readonly lastWritten: (when: string, file: string) => string;
  readonly troubles: Readonly<Record<'forbidden' | 'gone' | 'full' | 'failed' | 'fewer', Naming>>;
  readonly asideCount: Count;
  readonly tried: Readonly<
    Record<'read' | 'still-not' | 'gone' | 'not-now' | 'binned' | 'not-binned', Naming>
  >;
  readonly statesOfRow: (count: number, newest: string) => string;
  readonly besideName: (name: string, day: string) => string;
  readonly broughtBack: Naming;
  readonly showAll: Count;
  readonly deletedAt: Naming;
  readonly emptyBinSure: Count;
  readonly eraseConfirm: Naming;
}

const KeepingWordsContext = createContext<KeepingWords | null>(null);
export const KeepingWordsProvider = KeepingWordsContext.Provider;

/** The texts of the page of safe keeping; they come with it. */
export function useKeepingWords(): KeepingWords {
  const words = use(KeepingWordsContext);
  if (words === null) throw new Error('no texts of safe keeping are provided above this part');
  return words;
}
