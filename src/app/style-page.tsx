import { StyleScreen } from '../screens/style/style-screen';
import { DraftingWordsProvider } from '../ui/words/drafting-words';
import { draftingMessages } from '../ui/words/english/drafting';
import { inLanguage } from '../ui/words/language';

/** Where a maker draws a style, with its texts. */
export function StylePage() {
  return (
    <DraftingWordsProvider value={inLanguage('drafting', draftingMessages)}>
      <StyleScreen />
    </DraftingWordsProvider>
  );
}
