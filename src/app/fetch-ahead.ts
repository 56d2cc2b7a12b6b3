import { fetchDemoAhead } from './demo';

/**
 * What the first answer will need, asked for while the rest of the first script is still being run: the database's code, and where this
 * browser holds nothing yet, the example and its page. Imported before everything else.
 */
void import('../storage/dexie');
if (isFirstVisit()) {
  fetchDemoAhead();
  void import('../../shared/read-workbook');
  void import('./workbook-frame');
  void import('../screens/event/event-screen');
}

function isFirstVisit(): boolean {
  try {
    return localStorage.length === 0 && ['', '#/'].includes(location.hash);
  } catch {
    return false;
  }
}
