import type { MakingWords } from '../../ui/words/making-words';
import { plural } from './plural';

export const shoppingMessages: MakingWords['shopping'] = {
  needsCount: 'How many are to be made?',
  needsCountWhy: 'Once the Count page has a box on its list, this page says what to buy.',
  toEvent: 'Open the Count page',
  working: 'Working out the list',
  list: 'Shopping list',
  what: 'What',
  need: 'Need',
  onHand: 'On hand',
  buy: 'Buy',
  price: 'Price',
  enough: 'enough on hand',
  noPrice: 'no price yet',
  costHead: 'Cost',
  aFavor: 'a favor, for what it uses up',
  aFavorPaid: 'a favor, for what is paid now',
  paidWhy: 'Whole packs are paid for; what is left over stays in the cupboard.',
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
  share: (kind, total, perFavor) => `${kind}: ${total}, ${perFavor} a favor`,
  perFavor: (total, favors, each) => `${total} ÷ ${plural(favors, 'favor')} = ${each}`,
};
