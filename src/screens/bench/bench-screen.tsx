import { Link, useOutletContext } from 'react-router';
import { pageAddress, START } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { usePageWords } from '../../ui/words';
import { BenchOfEvent } from './bench-of-event';
import { BenchOfRecipe } from './bench-of-recipe';
import './bench.css';

// Fetched together: who opens a link to an event works with the same parts.
export { VisitScreen } from './visit-screen';

/** What do I do now? In an event the batch, counted; else the bench card of one piece, a step at a time or as a list, and on paper. */
export function BenchScreen() {
  const { workbook, recipe, recipes, event, plan, failed, again } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().bench;
  if (!recipe)
    return (
      <BlankState
        title={words.noRecipe}
        act={
          <Link
            className="button button-act"
            to={workbook.kind === 'event' ? pageAddress(workbook, 'event') : START}
          >
            {words.toRecipe}
          </Link>
        }
      />
    );
  const making = plan?.lines
    .filter(({ recipeId }) => recipeId === recipe.id)
    .reduce((sum, line) => sum + line.making, 0);
  const card = <BenchOfRecipe key={recipe.id} recipe={recipe} making={making ?? null} />;
  if (!event) return card;
  return <BenchOfEvent key={event.id} {...{ event, plan, recipes, failed, again, card }} />;
}
