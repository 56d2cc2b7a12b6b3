import { type ReactNode, useState } from 'react';
import { Link, useOutletContext, useSearchParams } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { inSeason } from '../../core/plan';
import { useSeason } from '../../state/results/season';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { pageAddress, SHELF } from '../../ui/frame/addresses';
import { classNames } from '../../ui/frame/class-names';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import type { ShelfDoors } from '../../ui/frame/shelf-doors';
import { usePageWords } from '../../ui/words';
import { HoursByWeek } from './hours-by-week';
import { SeasonList } from './season-list';
import { SharedPapers } from './shared-papers';
import './season.css';

/** Several events and classes at once: what to buy, what is cut together, and when. `band` stands above, where it is an example. */
export function SeasonScreen({ band }: { readonly band: ReactNode }) {
  const { season: words } = usePageWords();
  const shelf = useWorkbook((state) => state.rows);
  const events = inSeason([...shelf.events.values()].filter(({ lines }) => lines.length > 0));
  const [chosen, choose] = useChosen(events);
  const { season, stale } = useSeason(shelf, chosen);
  const printer = usePrinter();
  const nameOf = (id: string) => shelf.events.get(id)?.name ?? id;
  return (
    <main id="page" className="page page-sheet season" tabIndex={-1}>
      {band}
      <header className="page-head">
        <h1>{words.title}</h1>
        <Link className="button button-plain" to={SHELF}>
          {words.toShelf}
        </Link>
        <p>{words.why}</p>
      </header>
      {events.length > 0 && <Which events={events} chosen={chosen} choose={choose} />}
      {events.length < 2 && <OpenSeason none={events.length === 0} />}
      {chosen.length > 0 && !season && <p role="status">{words.counting}</p>}
      {chosen.length > 0 && season && (
        <div className={classNames('season-sums', stale && 'is-stale')} aria-busy={stale}>
          <PrintActs acts={[{ label: words.print, make: (paper) => printer.season(season, paper) }]} />
          <SeasonList season={season} nameOf={nameOf} />
          <HoursByWeek season={season} nameOf={nameOf} />
          <SharedPapers papers={season.papers} />
        </div>
      )}
    </main>
  );
}

/**
 * Which events are planned together: those the address names, so that they stay chosen when the page is loaded again; else the maker's
 * own, and where there are none those of the example.
 */
function useChosen(events: readonly FavorEvent[]): [readonly string[], (ids: readonly string[]) => void] {
  const [address, setAddress] = useSearchParams();
  const named = address.get('events')?.split(',');
  const anyOwn = events.some(({ example }) => !example);
  const chosen = events.filter(({ id, example }) => named?.includes(id) ?? (!example || !anyOwn));
  return [chosen.map(({ id }) => id), (ids) => setAddress({ events: ids.join(',') }, { replace: true })];
}

/** One event is no season: here is one to look at. */
function OpenSeason({ none }: { readonly none: boolean }) {
  const { season: words, shelf } = usePageWords();
  const { openExample } = useOutletContext<ShelfDoors>();
  const [failed, setFailed] = useState(false);
  return (
    <section>
      <p>{none ? words.none : words.oneOnly}</p>
      <Button tone="act" onClick={() => void openExample('season').then((opened) => setFailed(!opened))}>
        {shelf.openSeason}
      </Button>
      {failed && <p role="alert">{shelf.demoFailed}</p>}
    </section>
  );
}

interface WhichProps {
  readonly events: readonly FavorEvent[];
  readonly chosen: readonly string[];
  readonly choose: (ids: readonly string[]) => void;
}

/** Which events are planned together, each with the way to its own pages. */
function Which({ events, chosen, choose }: WhichProps) {
  const { season: words, shelf } = usePageWords();
  return (
    <fieldset className="season-which">
      <legend>{words.which}</legend>
      {events.map(({ id, name, date }) => (
        <div key={id}>
          <label>
            <input
              type="checkbox"
              checked={chosen.includes(id)}
              onChange={({ target }) =>
                choose(target.checked ? [...chosen, id] : chosen.filter((each) => each !== id))
              }
            />
            <span>
              <strong>{name}</strong>, {date === null ? words.noDate : shelf.onDate(date)}
            </span>
          </label>
          <Link
            className="button button-quiet"
            to={pageAddress({ kind: 'event', id }, 'event')}
            aria-label={words.openEvent(name)}
          >
            {words.open}
          </Link>
        </div>
      ))}
    </fieldset>
  );
}
