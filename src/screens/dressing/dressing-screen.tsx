import { Link, useOutletContext } from 'react-router';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { usePageWords } from '../../ui/words';
import { DressRecipe } from './dress-recipe';
import './dressing.css';

/** What goes on it? */
export function DressingScreen() {
  const { recipe, workbook, event, plan } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().dressing;
  if (!recipe)
    return (
      <BlankState
        title={words.noRecipe}
        act={
          <Link className="button button-act" to={pageAddress(workbook, 'event')}>
            {words.toEvent}
          </Link>
        }
      >
        <p>{words.noRecipeWhy}</p>
      </BlankState>
    );
  return <DressRecipe key={recipe.id} recipe={recipe} event={event} plan={plan} />;
}
