import { benchMessages } from './bench';
import { boxMessages } from './box';
import { buyingMessages } from './buying';
import { carryingMessages } from './carrying';
import { contentsMessages } from './contents';
import { dressingMessages } from './dressing';
import { eventMessages } from './event';
import { exampleMessages } from './example';
import { foldMessages } from './fold';
import { glossaryNames } from './glossary-names';
import { guestMessages } from './guests';
import { handoutMessages } from './handout';
import { marksMessages } from './marks';
import { paperLabelMessages } from './paper-label';
import { hoursMessages, runMessages } from './run';
import { seasonMessages } from './season';
import { sheetsMessages } from './sheets';
import { shoppingMessages } from './shopping';
import { tracingMessages } from './tracing';
import { visitMessages } from './visit';

export const makingMessages = {
  contents: contentsMessages,
  box: boxMessages,
  tracing: tracingMessages,
  marks: marksMessages,
  dressing: dressingMessages,
  event: eventMessages,
  guests: guestMessages,
  season: seasonMessages,
  carrying: carryingMessages,
  choosePaper: {
    ...paperLabelMessages,
    why: 'Then sheets and cost can be worked out.',
    yours: 'Your paper',
    other: 'New paper',
    useIt: 'Use it',
  },
  sheets: sheetsMessages,
  shopping: shoppingMessages,
  bench: benchMessages,
  buying: buyingMessages,
  run: runMessages,
  hours: hoursMessages,
  handout: handoutMessages,
  fold: foldMessages,
  example: exampleMessages,
  visit: visitMessages,
  glossary: { here: 'Words of this page', names: glossaryNames },
};
