import { FrontDoorScreen } from '../screens/front-door/front-door-screen';
import { frontDoorMessages } from '../ui/words/english/front-door';
import { FrontDoorWordsProvider } from '../ui/words/front-door-words';
import { inLanguage } from '../ui/words/language';

/** What goes in, with its texts. */
export function FrontDoorPage() {
  return (
    <FrontDoorWordsProvider value={inLanguage('frontDoor', frontDoorMessages)}>
      <FrontDoorScreen />
    </FrontDoorWordsProvider>
  );
}
