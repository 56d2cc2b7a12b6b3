import { censusKeyOf, DATABASE_NAME } from '../storage/database-name';
import { fetchDemoAhead } from './demo';
import { fetchWorkbookPage, shelfPage } from './pages';

/**
 * What the first answer will need, asked for while the rest of the first script is still being run: the database's code, the page at this
 * address, and where this browser holds nothing yet, the example and its page. Imported before everything else.
 */
const [, first = '', , page = ''] = location.hash.replace(/\?.*/, '').split('/');
quietly(import('../storage/dexie'));
if (first === 'recipe' || first === 'event') quietly(fetchWorkbookPage(page));
if (first === '' && isFirstVisit()) {
  fetchDemoAhead();
  quietly(import('../../shared/read-workbook'));
  quietly(fetchWorkbookPage('event'));
} else if (first === '') quietly(shelfPage.fetch());

/** A guess by the count of rows outside the database; what is shown is decided by what the database holds. */
function isFirstVisit(): boolean {
  try {
    return localStorage.getItem(censusKeyOf(DATABASE_NAME)) === null;
  } catch {
    return false;
  }
}

/** What does not come is asked for once more, and spoken of, where it is needed. */
function quietly(fetching: Promise<unknown>): void {
  fetching.catch(() => undefined);
}
