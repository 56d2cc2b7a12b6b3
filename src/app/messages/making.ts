import type { MakingWords } from '../../ui/words/making-words';
import { benchMessages } from './bench';
import { boxMessages } from './box';
import { eventMessages } from './event';
import { sheetsMessages } from './sheets';
import { shoppingMessages } from './shopping';

export const makingMessages: MakingWords = {
  box: boxMessages,
  event: eventMessages,
  sheets: sheetsMessages,
  shopping: shoppingMessages,
  bench: benchMessages,
};
