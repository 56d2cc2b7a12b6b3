import { FrontDoorScreen } from '../screens/front-door/front-door-screen';
import { FrontDoorWordsProvider } from '../ui/words/front-door-words';
import { inLanguage } from './language';
import { frontDoorMessages } from './messages/front-door';

/** What goes in, with its texts. */
export function FrontDoorPage() {
  return (
    <FrontDoorWordsProvider value={inLanguage('frontDoor', frontDoorMessages)}>
      <FrontDoorScreen />
    </FrontDoorWordsProvider>
  );
}
