import { Suspense, useEffect, useState } from 'react';
import { useLocation } from 'react-router';
import { readShown, type ShownLink } from '../exchange/keys';
import { memoryOfVisits } from '../exchange/memory-of-visits';
import { useWorkbook, WorkbookContext } from '../state/use-workbook';
import { DATABASE_NAME } from '../storage/database-name';
import { BlankState } from '../ui/frame/blank-state';
import { PageWordsProvider, usePageWords } from '../ui/words';
import { englishPages } from '../ui/words/english/pages';
import { inLanguage } from '../ui/words/language';
import { fetchedPage } from './fetched-page';
import { OwnStylesHere } from './own-styles-here';
import { RulerOfSettings } from './ruler-of-settings';
import { useTheme } from './theme';
import { visitingWorkbook } from './visiting-workbook';
import { waitForNetwork } from './wait-for-network';

const visitScreen = fetchedPage(async () => (await import('../screens/bench/bench-screen')).VisitScreen);

const pageWords = inLanguage('pages', englishPages);

/** What a helper or a learner sees who opened a link to one event: that event, and no way to anything else. */
export function VisitingPage() {
  const { pathname } = useLocation();
  const link = readShown(pathname);
  return (
    <PageWordsProvider value={pageWords}>
      {link && isSecureContext ? (
        <Visiting key={pathname} link={link} />
      ) : (
        <Unopened why={link ? 'notSecure' : 'brokenWhy'} />
      )}
    </PageWordsProvider>
  );
}

function Unopened({ why }: { why: 'notSecure' | 'brokenWhy' }) {
  const words = usePageWords().visit;
  return (
    <div className="frame">
      <main id="page" className="page page-sheet">
        <BlankState title={words.broken}>
          <p>{words[why]}</p>
        </BlankState>
      </main>
    </div>
  );
}

function Visiting({ link }: { link: ShownLink }) {
  const [visiting, setVisiting] = useState<ReturnType<typeof visitingWorkbook> | null>(null);
  // The page is drawn anew for another link.
  const [first] = useState(link);
  useEffect(() => {
    const opening = Promise.resolve().then(() => {
      const opened = visitingWorkbook(first, {
        address: new URL('exchange', document.baseURI).href,
        memory: memoryOfVisits(DATABASE_NAME),
        language: navigator.language,
        now: () => Date.now(),
        alone: (name, work) =>
          'locks' in navigator ? navigator.locks.request(`crease-and-count.visit.${name}`, work) : work(),
        wait: waitForNetwork,
      });
      setVisiting(opened);
      return opened;
    });
    return () => void opening.then(({ close }) => close());
  }, [first]);
  if (!visiting) return null;
  return (
    <WorkbookContext value={visiting.workbook}>
      <RulerOfSettings>
        <OwnStylesHere />
        <Titled />
        <Suspense fallback={null}>
          <visitScreen.Page kind={link.kind} />
        </Suspense>
      </RulerOfSettings>
    </WorkbookContext>
  );
}

/** The tab has the name of the event. */
function Titled(): null {
  useTheme();
  const events = useWorkbook((state) => state.rows.events);
  const name = [...events.values()][0]?.name;
  useEffect(() => {
    if (name !== undefined) document.title = name;
  }, [name]);
  return null;
}
