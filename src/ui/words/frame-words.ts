import type { PageName, PlaceName } from '../frame/pages';
import type { Count, Naming, Texts } from './texts';

/** Why something could not be kept; the names are those of the storage port. */
type FaultName = 'full' | 'slow' | 'stale' | 'newer' | 'blocked' | 'lost' | 'unfetched' | 'broken' | 'absent';
/** What happened by itself; the names are those of the workbook's notices. */
type NoticeName =
  | 'deleted'
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

/** Texts round every page. */
export interface FrameWords {
  readonly frame: Texts<
    | 'product'
    | 'toShelf'
    | 'toPage'
    | 'pages'
    | 'choosePaper'
    | 'choosePaperWhy'
    | 'yourPaper'
    | 'newPaper'
    | 'newPaperHelp'
    | 'paperUnread'
    | 'print'
    | 'useIt'
    | 'places'
    | 'undo'
    | 'redo'
    | 'preferences'
    | 'unit'
    | 'inches'
    | 'millimetres'
    | 'theme'
    | 'light'
    | 'dark'
    | 'contrast'
    | 'find'
    | 'help'
    | 'system'
    | 'name'
    | 'loading'
    | 'unplanned'
    | 'unplannedWhy'
    | 'unanswered'
    | 'partMissing'
    | 'unread'
    | 'appBroken'
    | 'appBrokenRemedy'
    | 'saveFile'
    | 'broken'
    | 'brokenRemedy'
    | 'again'
    | 'notFound'
    | 'notFoundWhy'
    | 'boxesOfEvent'
    | 'dismiss'
    | 'newerVersion'
    | 'newerVersionUnsaved'
    | 'takeVersion'
    | 'blocked'
    | 'blockedRemedy'
    | 'acceptLoss'
    | 'carryOn'
    | 'makeMine'
  > & {
    readonly nameOf: Texts<'recipe' | 'event'>;
    readonly kindOf: Texts<'recipe' | 'event'>;
    /** Where a thing that is deleted, or may be, is used. */
    readonly usedIn: (names: readonly string[]) => string;
    readonly lossFound: Count;
  };
  readonly pages: Readonly<Record<PageName, string>>;
  readonly places: Readonly<Record<PlaceName, string>>;
  readonly needs: Texts<
    | 'pickStyle'
    | 'howMany'
    | 'needsCount'
    | 'needsPaper'
    | 'nothingToBuy'
    | 'mendFirst'
    | 'ready'
    | 'oneSheet'
    | 'counting'
    | 'unplanned'
    | 'whatInside'
    | 'easyMarks'
    | 'bare'
    | 'toTeach'
    | 'seeItClose'
  > & {
    readonly things: Count;
    readonly ways: Count;
    readonly sheets: Count;
    readonly buy: Count;
    readonly mends: Count;
    readonly favors: (asked: number, spares: number) => string;
  };
  readonly faults: Readonly<Record<FaultName, string>>;
  readonly notices: Readonly<Record<NoticeName, Naming>>;
}
