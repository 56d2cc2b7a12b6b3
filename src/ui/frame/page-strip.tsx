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
import { type ReactNode, useEffect, useRef } from 'react';
import { useWords } from '../words';
import { classNames } from './class-names';
import { PAGES, type PageName, type PageNeed } from './pages';
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

interface PageStripProps {
  readonly current: PageName;
  readonly needs: Readonly<Record<PageName, PageNeed>>;
  /** Wraps a page's face in a link to it. */
  readonly link: (page: PageName, face: ReactNode, className: string) => ReactNode;
}

/** The pages of a workbook as tabs of one sheet, in the order of the work, each with its result so far or what it needs next. */
export function PageStrip({ current, needs, link }: PageStripProps) {
  const words = useWords();
  const strip = useRef<HTMLElement>(null);
  useEffect(() => {
    const tab = strip.current?.querySelector<HTMLElement>(`[data-page="${current}"]`);
    if (strip.current && tab)
      strip.current.scrollLeft = tab.offsetLeft + tab.offsetWidth / 2 - strip.current.clientWidth / 2;
  }, [current]);
  return (
    <nav ref={strip} className="page-strip screen-only" aria-label={words.frame.pages}>
      <ol>
        {PAGES.map((page) => {
          const Icon = ICONS[page];
          const need = needs[page];
          return (
            <li
              key={page}
              data-page={page}
              className={classNames('page-tab', page === current && 'page-tab-current')}
            >
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
        })}
      </ol>
    </nav>
  );
}
