import { HelpScreen } from '../screens/help/help-screen';
import { HelpWordsProvider } from '../ui/words/help-words';
import { inLanguage } from './language';
import { helpMessages } from './messages/help';

/** The page of words and lines, with its texts. */
export function HelpPage() {
  return (
    <HelpWordsProvider value={inLanguage('help', helpMessages)}>
      <HelpScreen />
    </HelpWordsProvider>
  );
}
