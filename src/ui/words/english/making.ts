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

/** A roll of tape as its label was read. */
interface TapeRead {
  readonly width: string;
  readonly meters: number;
  /** Null: the label names no price. */
  readonly price: string | null;
}

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
  chooseTape: {
    head: 'Choose a tape',
    why: 'Then the list says how many rolls to buy.',
    yours: 'Your tape',
    other: 'New tape',
    useIt: 'Use it',
    named: (width: string) => `Double-sided tape, ${width}`,
    help: 'Copy the label: width, length and price, such as 1/4 in x 27 yd, $3.99.',
    noRoll: 'We need the width and the length of the roll, such as 1/4 in x 27 yd.',
    read: ({ width, meters, price }: TapeRead) =>
      `${width} wide, ${Math.round(meters / 0.9144)} yd (${Math.round(meters)} m) on a roll. ${price ? `${price} a roll.` : 'No price.'}`,
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
