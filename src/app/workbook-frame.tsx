import { memo, Suspense, useDeferredValue, useEffect } from 'react';
import { Link, Navigate, Outlet, useLocation } from 'react-router';
import { isPage, pageAddress } from '../ui/frame/addresses';
import type { OpenWorkbook } from '../ui/frame/open-workbook';
import { PageStrip } from '../ui/frame/page-strip';
import { type PageName, RECIPE_PAGES } from '../ui/frame/pages';
import { PageWordsProvider, useWords } from '../ui/words';
import { englishPages } from '../ui/words/english/pages';
import { inLanguage } from '../ui/words/language';
import { ExampleBand } from './example-band';
import { useOpenWorkbook } from './open-workbook';
import { PageNotFound } from './page-broken';
import { usePageNeeds } from './page-needs';
import { WordsHere } from './words-here';
import { setInSight } from './workbook-in-sight';

const pageWords = inLanguage('pages', englishPages);

/** One recipe or one event as a workbook: its name, its pages, and the page that is open. */
export function WorkbookFrame() {
  const open = useOpenWorkbook();
  const words = useWords();
  const restedOpen = useDeferredValue(open);
  const { pathname } = useLocation();
  const page = pathname.split('/')[3];
  useEffect(() => {
    setInSight(open);
    return () => setInSight(null);
  }, [open]);
  if (!open) return <PageNotFound />;
  const { workbook } = open;
  if (!isPage(page))
    return <Navigate to={pageAddress(workbook, workbook.kind === 'recipe' ? 'box' : 'event')} replace />;
  return (
    <div className="workbook" key={workbook.id}>
      <Strip open={restedOpen ?? open} page={page} />
      <main id="page" className={`page page-sheet page-${page}`} tabIndex={-1}>
        <h1 className="said-only">
          {words.pages[page]}, {open.event?.name ?? open.recipe?.name}
        </h1>
        {RECIPE_PAGES.includes(page) && <RecipesOfEvent open={open} page={page} />}
        <PageWordsProvider value={pageWords}>
          <ExampleBand of={open.event ?? open.recipe} />
          <Suspense fallback={<div className="page-opening" aria-busy="true" />}>
            <Outlet context={open} />
            <WordsHere page={page} />
          </Suspense>
        </PageWordsProvider>
      </main>
    </div>
  );
}

/** Follows a keystroke when the page it was typed on stands. */
const Strip = memo(function Strip({ open, page }: { open: OpenWorkbook; page: PageName }) {
  const needs = usePageNeeds(open);
  return (
    <PageStrip
      current={page}
      needs={needs}
      link={(to, face, className) => (
        <Link
          to={pageAddress(open.workbook, to, open.recipe?.id)}
          className={className}
          aria-current={to === page ? 'page' : undefined}
        >
          {face}
        </Link>
      )}
    />
  );
});

/** Where an event makes several boxes, which one this page is about. */
function RecipesOfEvent({
  open: { workbook, recipe, recipes },
  page,
}: {
  open: OpenWorkbook;
  page: PageName;
}) {
  const words = useWords().frame;
  if (recipes.length < 2) return null;
  return (
    <nav className="recipes-of-event screen-only" aria-label={words.boxesOfEvent}>
      {recipes.map(({ id, name }) => (
        <Link
          key={id}
          to={pageAddress(workbook, page, id)}
          aria-current={id === recipe?.id ? 'true' : undefined}
        >
          {name}
        </Link>
      ))}
    </nav>
  );
}
