import { NewRecipeScreen } from '../screens/new-recipe/new-recipe-screen';
import { PickingWordsProvider } from '../ui/words/picking-words';
import { inLanguage } from './language';
import { pickingMessages } from './messages/picking';

/** Where a new box begins, with its texts. */
export function PickingPage() {
  return (
    <PickingWordsProvider value={inLanguage('picking', pickingMessages)}>
      <NewRecipeScreen />
    </PickingWordsProvider>
  );
}
