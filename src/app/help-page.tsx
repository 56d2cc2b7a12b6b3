import { HelpScreen } from '../screens/help/help-screen';
import { helpMessages } from '../ui/words/english/help';
import { HelpWordsProvider } from '../ui/words/help-words';
import { inLanguage } from '../ui/words/language';

/** The page of words and lines, with its texts. */
export function HelpPage() {
  return (
    <HelpWordsProvider value={inLanguage('help', helpMessages)}>
      <HelpScreen />
    </HelpWordsProvider>
  );
}
