import { useEffect } from 'react';
import { useLocation } from 'react-router';
import { useWorkbook } from '../state/use-workbook';
import { HELP, isPage, KEEPING, SEASON, SHELF, START, workbookAt } from '../ui/frame/addresses';
import { useWords } from '../ui/words';

/** The name of the tab: the page and the workbook it belongs to, then the app. */
export function usePageTitle(): void {
  const { frame, pages, shelf } = useWords();
  const { pathname } = useLocation();
  const open = workbookAt(pathname);
  const page = pathname.split('/')[3];
  const name = useWorkbook(
    ({ rows }) => open && (open.kind === 'event' ? rows.events : rows.recipes).get(open.id)?.name,
  );
  const outside: Readonly<Record<string, string>> = {
    [SHELF]: shelf.title,
    [START]: shelf.newRecipe,
    [KEEPING]: shelf.safeKeeping,
    [HELP]: frame.help,
    [SEASON]: shelf.season,
  };
  const says = name && isPage(page) ? `${pages[page]}, ${name}` : outside[pathname];
  useEffect(() => {
    document.title = says === undefined ? frame.product : `${says} - ${frame.product}`;
  }, [says, frame.product]);
}
