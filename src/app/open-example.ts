import { useCallback, useEffect, useRef } from 'react';
import { useLocation, useNavigate } from 'react-router';
import { useWorkbook } from '../state/use-workbook';
import { pageAddress, SEASON } from '../ui/frame/addresses';
import type { ExampleName, OpenExample } from '../ui/frame/shelf-doors';
import { fetchExample } from './demo';
import { fetchWorkbookPage, seasonPage } from './pages';

/** The page each example opens on, fetched with it so that it is drawn in one go. */
const fetchPage: Readonly<Record<ExampleName, () => Promise<unknown>>> = {
  supper: () => fetchWorkbookPage('event'),
  season: () => seasonPage.fetch(),
};

/**
 * Puts a finished example on the shelf and opens it. Answers whether it could be fetched. Someone who has gone to another page since is
 * left there: nothing is placed.
 */
export function useOpenExample(): OpenExample {
  const planImport = useWorkbook((state) => state.planImport);
  const placeExample = useWorkbook((state) => state.placeExample);
  const navigate = useNavigate();
  const { pathname } = useLocation();
  const here = useRef(pathname);
  useEffect(() => {
    here.current = pathname;
  }, [pathname]);
  return useCallback(
    async (name) => {
      const from = here.current;
      const [text, { readWorkbook }] = await Promise.all([
        fetchExample(name),
        import('../../shared/read-workbook'),
        // Where it does not come, the page says so itself when it is opened.
        fetchPage[name]().catch(() => null),
      ]);
      const reading = text === null ? null : readWorkbook(text);
      if (!reading?.ok) return false;
      if (here.current !== from) return true;
      const plan = planImport(reading.file);
      placeExample(plan);
      const events = plan.rows.flatMap(({ table, row }) => (table === 'events' ? [row.id] : []));
      const [event = ''] = events;
      void navigate(
        name === 'season' ? seasonOf(events) : pageAddress({ kind: 'event', id: event }, 'event'),
        { replace: true },
      );
      return true;
    },
    [planImport, placeExample, navigate],
  );
}

const seasonOf = (events: readonly string[]): string => `${SEASON}?events=${events.join(',')}`;
