import { censusKeyOf, DATABASE_NAME } from '../storage/database-name';
import { fetchDemo } from './demo';
import { fetchWorkbookPage, shelfPage } from './pages';

/** The page of a workbook that the example opens on. */
export const EXAMPLE_PAGE = 'event';

let example: Promise<string | null> | null = null;

/** The text of the example's file, fetched once; after a failure the next one who asks tries again. */
export async function exampleText(): Promise<string | null> {
  example ??= fetchDemo();
  const text = await example;
  if (text === null) example = null;
  return text;
}

/**
 * Fetches at once what the address will need, beside the work of starting: one file after the other would be waited for in turn. A guess
 * costs nothing but the fetching; what is shown is decided by what the database holds.
 */
export function fetchAhead(hash: string, store: Pick<Storage, 'getItem'> | null): void {
  void quietly(import('../storage/dexie'));
  const [, first = '', , page = ''] = hash.split('/');
  if (first === 'recipe' || first === 'event') void quietly(fetchWorkbookPage(page));
  else if (first !== '') return;
  else if (store?.getItem(censusKeyOf(DATABASE_NAME))) void quietly(shelfPage.fetch());
  else void quietly(Promise.all([exampleText(), fetchWorkbookPage(EXAMPLE_PAGE)]));
}

/** A file that does not come is asked for once more, and spoken of, where it is needed. */
const quietly = (fetching: Promise<unknown>) => fetching.catch(() => undefined);
