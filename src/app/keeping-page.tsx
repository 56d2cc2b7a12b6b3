import { KeepingScreen } from '../screens/keeping/keeping-screen';
import { KeepingWordsProvider } from '../ui/words/keeping-words';
import { inLanguage } from './language';
import { keepingMessages } from './messages/keeping';

/** The page of safe keeping, with its texts. */
export function KeepingPage() {
  return (
    <KeepingWordsProvider value={inLanguage('keeping', keepingMessages)}>
      <KeepingScreen />
    </KeepingWordsProvider>
  );
}
