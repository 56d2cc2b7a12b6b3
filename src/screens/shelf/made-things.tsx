import { CalendarRange } from 'lucide-react';
import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { TextField } from '../../ui/fields/text-field';
import { SEASON } from '../../ui/frame/addresses';
import { WHOLE_UP_TO } from '../../ui/frame/long-list';
import { useSay, useWords } from '../../ui/words';
import { EventRows } from './event-rows';
import { holding, newestFirst, textOfEvent, textOfRecipe } from './find-on-shelf';
import { RecipeCards } from './recipe-cards';

/** So few things are found by looking. source: our own */
const FIELD_FROM = 12;
/** More events than this would keep the boxes out of sight; the first of them stand, the others at a press. source: our own */
const [MANY_EVENTS, FIRST_EVENTS] = [24, 12];
/** After the last key, before the address holds what was typed: a browser refuses an address that changes with every key. source: our own */
const INTO_ADDRESS_MS = 300;

/** Events and boxes, newest first, and on a full shelf a field that finds them. */
export function MadeThings() {
  const words = useWords().shelf;
  const { recipes, events } = useWorkbook((state) => state.rows);
  const [typed, setTyped] = useTypedInAddress();
  const wanted = useDeferredValue(typed);
  const found = useFound(wanted);
  const [allEvents, setAllEvents] = useState(false);
  const many = recipes.size + events.size;
  const few = !allEvents && found.events.length > MANY_EVENTS;
  const looking = wanted.trim() !== '';
  return (
    <>
      {many > FIELD_FROM && (
        <div className="shelf-find">
          <TextField
            type="search"
            label={words.find}
            help={many > WHOLE_UP_TO ? words.findInAll : words.findHelp}
            value={typed}
            onChange={setTyped}
          />
          <p role="status" className="soft">
            {looking
              ? words.found(found.recipes.length, found.events.length)
              : words.holds(recipes.size, events.size)}
          </p>
        </div>
      )}
      {(!looking || found.events.length > 0) && (
        <section aria-labelledby="shelf-events">
          <h2 id="shelf-events">{words.events}</h2>
          <EventRows events={few ? found.events.slice(0, FIRST_EVENTS) : found.events} />
          {events.size > 0 && (
            <Link className="button button-quiet" to={SEASON}>
              <CalendarRange aria-hidden="true" />
              {words.seasonWhy}
            </Link>
          )}
          {found.events.length > MANY_EVENTS && (
            <Button tone="quiet" aria-expanded={allEvents} onClick={() => setAllEvents(!allEvents)}>
              {allEvents ? words.fewerEvents : words.allEvents(found.events.length)}
            </Button>
          )}
        </section>
      )}
      {(!looking || found.recipes.length > 0) && (
        <section aria-labelledby="shelf-recipes">
          <h2 id="shelf-recipes">{words.recipes}</h2>
          <RecipeCards recipes={found.recipes} />
        </section>
      )}
    </>
  );
}

/** The boxes and events that hold what is wanted. Texts are gathered at the first key, so that the shelf opens without them. */
function useFound(wanted: string) {
  const words = useWords().shelf;
  const say = useSay();
  const rows = useWorkbook((state) => state.rows);
  const recipes = useMemo(() => newestFirst(rows.recipes), [rows.recipes]);
  const events = useMemo(() => newestFirst(rows.events), [rows.events]);
  const looking = wanted.trim() !== '';
  const texts = useMemo(
    () =>
      looking
        ? {
            recipes: recipes.map((recipe) => textOfRecipe(recipe, say)),
            events: events.map((event) => textOfEvent(event, rows.recipes, words.onDate)),
          }
        : { recipes: [], events: [] },
    [looking, recipes, events, rows.recipes, say, words],
  );
  return useMemo(
    () => ({
      recipes: holding(recipes, texts.recipes, wanted),
      events: holding(events, texts.events, wanted),
    }),
    [recipes, events, texts, wanted],
  );
}

/** What is typed, which the address holds as well: the way back from a box leads to what was found. */
function useTypedInAddress() {
  const [params, setParams] = useSearchParams();
  const [typed, setTyped] = useState(params.get('find') ?? '');
  const inAddress = params.get('find') ?? '';
  useEffect(() => {
    if (typed === inAddress) return;
    const later = setTimeout(
      () => setParams(typed === '' ? {} : { find: typed }, { replace: true }),
      INTO_ADDRESS_MS,
    );
    return () => clearTimeout(later);
  }, [typed, inAddress, setParams]);
  return [typed, setTyped] as const;
}
