import { useOutletContext } from 'react-router';
import { BlankState } from '../../ui/blank-state';
import type { OpenWorkbook } from '../../ui/open-workbook';
import { usePageWords } from '../../ui/words';

/** How do I teach it? */
export function HandoutScreen() {
  const { recipe } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().handout;
  return <BlankState title={recipe ? words.handoutOf(recipe.name) : words.noRecipe} />;
}
