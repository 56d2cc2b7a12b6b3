import { useOutletContext } from 'react-router';
import { BlankState } from '../../ui/blank-state';
import type { OpenWorkbook } from '../../ui/open-workbook';
import { usePageWords } from '../../ui/words';

/** Can I hit it on my trimmer? */
export function MarksScreen() {
  const { recipe } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().marks;
  return <BlankState title={recipe ? words.marksOf(recipe.name) : words.noRecipe} />;
}
