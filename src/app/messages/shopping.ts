import type { MakingWords } from '../../ui/words/making-words';
import { plural } from './plural';

export const shoppingMessages: MakingWords['shopping'] = {
  needsCount: 'How many boxes?',
  needsCountWhy: 'Add a box on the Count page, and we list what to buy.',
  toEvent: 'Open the Count page',
  working: 'Making the list',
  list: 'Shopping list',
  what: 'Item',
  need: 'Need',
  onHand: 'On hand',
  buy: 'Buy',
  price: 'Price',
  enough: 'enough on hand',
  noPrice: 'no price yet',
  costHead: 'Cost',
  aFavor: 'materials per favor',
  aFavorPaid: 'spent per favor',
  paidWhy: 'You pay for whole packs. Leftovers stay in your supplies.',
  print: 'Print the list',
  units: {
    sheet: (count) => plural(count, 'sheet'),
    roll: (count) => plural(count, 'roll'),
    piece: (count) => plural(count, 'piece'),
    bottle: (count) => plural(count, 'bottle'),
  },
  packs: (count, units, unit) => (units === 1 ? plural(count, unit) : `${plural(count, 'pack')} of ${units}`),
  kinds: {
    paper: 'Paper',
    adhesive: 'Tape and glue',
    ribbon: 'Ribbon and twine',
    extras: 'Extras',
    contents: 'Contents',
  },
  freeOf: (count) => `${count} of them free`,
  share: (kind, total, perFavor) => `${kind}: ${total}, ${perFavor} per favor`,
  perFavor: (total, favors, each) => `${total} ÷ ${plural(favors, 'favor')} = ${each}`,
};
