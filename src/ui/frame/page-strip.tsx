import {
  BookOpen,
  Box,
  Candy,
  Flag,
  Gift,
  LayoutGrid,
  ListChecks,
  type LucideIcon,
  Origami,
  Ribbon,
  Ruler,
  ShoppingBasket,
} from 'lucide-react';
import type { ReactNode } from 'react';
import { useWords } from '../words';
import { classNames } from './class-names';
import {
  FIRST_PAGE,
  type PageName,
  type PageNeed,
  PLACE_NAMES,
  PLACES,
  type PlaceName,
  placeOf,
} from './pages';
import './page-strip.css';

const ICONS: Readonly<Record<PageName, LucideIcon>> = {
  contents: Candy,
  box: Box,
  fold: Origami,
  marks: Ruler,
  dressing: Ribbon,
  event: Gift,
  sheets: LayoutGrid,
  shopping: ShoppingBasket,
  bench: ListChecks,
  handout: BookOpen,
};

const PLACE_ICONS: Readonly<Record<PlaceName, LucideIcon>> = {
  box: Box,
  decorate: Ribbon,
  count: Gift,
  buy: ShoppingBasket,
  make: ListChecks,
};

interface PageStripProps {
  readonly current: PageName;
  readonly needs: Readonly<Record<PageName, PageNeed>>;
  /** Wraps a page's face in a link to it. */
  readonly link: (page: PageName, face: ReactNode, className: string) => ReactNode;
}

/**
 * The pages of a workbook in five places, in the order of the work, each with its result so far or what it needs next. On a narrow screen the
 * five places are one bar, and the pages of the open place one row under it.
 */
export function PageStrip({ current, needs, link }: PageStripProps) {
  const words = useWords();
  const here = placeOf(current);
  return (
    <>
      <nav className="place-bar screen-only" aria-label={words.frame.places}>
        <ol>
          {PLACE_NAMES.map((place) => {
            const Icon = PLACE_ICONS[place];
            const flagged = PLACES[place].some((page) => needs[page].flagged);
            return (
              <li key={place} className={classNames('place', place === here && 'place-current')}>
                {link(
                  place === here ? current : FIRST_PAGE[place],
                  <>
                    <Icon aria-hidden="true" className="page-tab-icon" />
                    <span className="place-name">{words.places[place]}</span>
                    {flagged && <Flag aria-hidden="true" className="place-flag" />}
                  </>,
                  'place-link',
                )}
              </li>
            );
          })}
        </ol>
      </nav>
      <nav className="page-strip screen-only" aria-label={words.frame.pages}>
        <ol>
          {PLACE_NAMES.map((place) => (
            <li
              key={place}
              className={classNames(
                'page-group',
                place === here && 'page-group-current',
                PLACES[place].length === 1 && 'page-group-alone',
              )}
            >
              <span className="page-group-name">{words.places[place]}</span>
              <ol>
                {PLACES[place].map((page) => (
                  <PageTab key={page} page={page} current={current} need={needs[page]} link={link} />
                ))}
              </ol>
            </li>
          ))}
        </ol>
      </nav>
    </>
  );
}

interface PageTabProps extends Pick<PageStripProps, 'current' | 'link'> {
  readonly page: PageName;
  readonly need: PageNeed;
}

function PageTab({ page, current, need, link }: PageTabProps) {
  const words = useWords();
  const Icon = ICONS[page];
  return (
    <li data-page={page} className={classNames('page-tab', page === current && 'page-tab-current')}>
      {link(
        page,
        <>
          <Icon aria-hidden="true" className="page-tab-icon" />
          <span className="page-tab-name">{words.pages[page]}</span>
          <span className={classNames('page-tab-need', need.flagged && 'page-tab-flagged')}>
            {need.flagged && <Flag aria-hidden="true" />}
            <span>{need.says}</span>
          </span>
        </>,
        'page-tab-link',
      )}
    </li>
  );
}
