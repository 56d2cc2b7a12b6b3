import { NewRecipeScreen } from '../screens/new-recipe/new-recipe-screen';
import { pickingMessages } from '../ui/words/english/picking';
import { inLanguage } from '../ui/words/language';
import { PickingWordsProvider } from '../ui/words/picking-words';

/** Where a new box begins, with its texts. */
export function PickingPage() {
  return (
    <PickingWordsProvider value={inLanguage('picking', pickingMessages)}>
      <NewRecipeScreen />
    </PickingWordsProvider>
  );
}
