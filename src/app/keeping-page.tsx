import { KeepingScreen } from '../screens/keeping/keeping-screen';
import { keepingMessages } from '../ui/words/english/keeping';
import { KeepingWordsProvider } from '../ui/words/keeping-words';
import { inLanguage } from '../ui/words/language';

/** The page of safe keeping, with its texts. */
export function KeepingPage() {
  return (
    <KeepingWordsProvider value={inLanguage('keeping', keepingMessages)}>
      <KeepingScreen />
    </KeepingWordsProvider>
  );
}
