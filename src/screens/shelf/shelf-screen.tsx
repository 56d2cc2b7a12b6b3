import { Gift, PackagePlus } from 'lucide-react';
import { Link, useNavigate } from 'react-router';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { pageAddress, START } from '../../ui/frame/addresses';
import { useWords } from '../../ui/words';
import { Cupboard } from './cupboard';
import { EmptyShelf } from './empty-shelf';
import { EventRows } from './event-rows';
import { FilesAndBin } from './files-and-bin';
import { KeepingNotice } from './keeping-notice';
import { RecipeCards } from './recipe-cards';
import './shelf.css';

/** What have I got? Recipes, events, paper and supplies on hand, tools; and the way in and out for files. */
export function ShelfScreen({ exampleFailed }: { readonly exampleFailed: boolean }) {
  const words = useWords().shelf;
  const recipes = useWorkbook((state) => state.rows.recipes);
  const events = useWorkbook((state) => state.rows.events);
  const createEvent = useWorkbook((state) => state.createEvent);
  const navigate = useNavigate();
  const startEvent = () => {
    const made = createEvent({ name: words.newEventName });
    if (made.ok) void navigate(pageAddress({ kind: 'event', id: made.id }, 'event'));
  };

  if (recipes.size === 0 && events.size === 0)
    return (
      <main id="page" className="page page-sheet shelf" tabIndex={-1}>
        <KeepingNotice />
        <EmptyShelf exampleFailed={exampleFailed} />
        <Cupboard />
        <FilesAndBin />
      </main>
    );
  return (
    <main id="page" className="page page-sheet shelf" tabIndex={-1}>
      <KeepingNotice />
      <header className="shelf-head">
        <h1>{words.title}</h1>
        <Link className="button button-act" to={START}>
          <PackagePlus aria-hidden="true" />
          {words.newRecipe}
        </Link>
        <Button icon={<Gift aria-hidden="true" />} onClick={startEvent}>
          {words.newEvent}
        </Button>
      </header>
      <section aria-labelledby="shelf-events">
        <h2 id="shelf-events">{words.events}</h2>
        <EventRows events={[...events.values()]} />
      </section>
      <section aria-labelledby="shelf-recipes">
        <h2 id="shelf-recipes">{words.recipes}</h2>
        <RecipeCards recipes={[...recipes.values()]} />
      </section>
      <Cupboard />
      <FilesAndBin />
    </main>
  );
}
