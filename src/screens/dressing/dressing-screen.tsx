import { useOutletContext } from 'react-router';
import { BlankState } from '../../ui/blank-state';
import type { OpenWorkbook } from '../../ui/open-workbook';
import { usePageWords } from '../../ui/words';

/** What goes on it? */
export function DressingScreen() {
  const { recipe } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().dressing;
  return <BlankState title={recipe ? words.dressingOf(recipe.name) : words.noRecipe} />;
}
