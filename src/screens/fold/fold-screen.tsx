import { Link, useOutletContext } from 'react-router';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { usePageWords } from '../../ui/words';
import { FoldRecipe } from './fold-recipe';
import './fold.css';

/** How does it close? The card in space, folded along its own closing path. */
export function FoldScreen() {
  const { recipe, workbook } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().fold;
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
  return <FoldRecipe key={recipe.id} recipe={recipe} />;
}
