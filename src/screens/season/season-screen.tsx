import { useState } from 'react';
import { Link } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { inSeason } from '../../core/plan';
import { useSeason } from '../../state/results/season';
import { useWorkbook } from '../../state/use-workbook';
import { SHELF } from '../../ui/frame/addresses';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords } from '../../ui/words';
import { HoursByWeek } from './hours-by-week';
import { SeasonList } from './season-list';
import { SharedPapers } from './shared-papers';
import './season.css';

/** Several events and classes at once: what to buy, what is cut together, and when. */
export function SeasonScreen() {
  const { season: words } = usePageWords();
  const shelf = useWorkbook((state) => state.rows);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const events = inSeason([...shelf.events.values()].filter(({ lines }) => lines.length > 0));
  const chosen = events.filter(({ id }) => !left.has(id)).map(({ id }) => id);
  const { season, stale } = useSeason(shelf, chosen);
  const nameOf = (id: string) => shelf.events.get(id)?.name ?? id;
  return (
    <main id="page" className="page page-sheet season" tabIndex={-1}>
      <header className="page-head">
        <h1>{words.title}</h1>
        <Link className="button button-plain" to={SHELF}>
          {words.toShelf}
        </Link>
        <p>{words.why}</p>
      </header>
      {events.length === 0 ? <p>{words.none}</p> : <Which events={events} left={left} setLeft={setLeft} />}
      {chosen.length > 0 && !season && <p role="status">{words.counting}</p>}
      {chosen.length > 0 && season && (
        <div className={classNames('season-sums', stale && 'is-stale')} aria-busy={stale}>
          <SeasonList season={season} nameOf={nameOf} />
          <HoursByWeek season={season} nameOf={nameOf} />
          <SharedPapers papers={season.papers} />
        </div>
      )}
    </main>
  );
}

interface WhichProps {
  readonly events: readonly FavorEvent[];
  readonly left: ReadonlySet<string>;
  readonly setLeft: (left: ReadonlySet<string>) => void;
}

/** Which events are planned together. */
function Which({ events, left, setLeft }: WhichProps) {
  const { season: words, shelf } = usePageWords();
  const tick = (id: string, on: boolean) => {
    const next = new Set(left);
    if (on) next.delete(id);
    else next.add(id);
    setLeft(next);
  };
  return (
    <fieldset className="season-which">
      <legend>{words.which}</legend>
      {events.map(({ id, name, date }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={!left.has(id)}
            onChange={({ target }) => tick(id, target.checked)}
          />
          <span>
            <strong>{name}</strong>, {date === null ? words.noDate : shelf.onDate(date)}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
