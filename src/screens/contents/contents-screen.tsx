import { useOutletContext } from 'react-router';
import { BlankState } from '../../ui/blank-state';
import type { OpenWorkbook } from '../../ui/open-workbook';
import { usePageWords } from '../../ui/words';

/** What goes inside? */
export function ContentsScreen() {
  const { recipe } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().contents;
  return <BlankState title={recipe ? words.contentsOf(recipe.name) : words.noRecipe} />;
}
