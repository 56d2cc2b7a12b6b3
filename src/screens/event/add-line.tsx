import { Plus } from 'lucide-react';
import { Link } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { START } from '../../ui/frame/addresses';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';

const FIRST_COUNT = 40;

/** Recipes that are not on the event yet, those of the example only on the example itself, each one press away; and the way to a new one. */
export function AddLine({ event, edits }: { event: FavorEvent; edits: EventEdits }) {
  const words = usePageWords().event;
  const recipes = useWorkbook((state) => state.rows.recipes);
  const count = event.lines[0]?.count ?? FIRST_COUNT;
  const known = event.example ? [...recipes.values()] : ownOf(recipes);
  const free = known.filter(({ id }) => event.lines.every(({ recipeId }) => recipeId !== id));
  return (
    <div className="add-line">
      {free.map((recipe) => (
        <Button
          key={recipe.id}
          icon={<Plus aria-hidden="true" />}
          onClick={() => edits.addLine(recipe, count)}
        >
          {recipe.name}
        </Button>
      ))}
      <Link className="button button-quiet" to={`${START}?event=${event.id}`}>
        <Plus aria-hidden="true" />
        {words.newBox}
      </Link>
    </div>
  );
}
