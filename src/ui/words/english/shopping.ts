import type { ShoppingRow } from '../../../core/plan';

type Unit = ShoppingRow['unit'];

import { plural } from './plural';

export const shoppingMessages = {
  needsCount: 'How many boxes?',
  needsCountWhy: 'Add a box on the Count page, and we list what to buy.',
  toEvent: 'Open the Count page',
  working: 'Making the list',
  list: 'Shopping list',
  what: 'Item',
  need: 'Need',
  onHand: 'On hand',
  askFor: (weight: string) => `Ask for ${weight}`,
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
    sheet: (count: number) => plural(count, 'sheet'),
    roll: (count: number) => plural(count, 'roll'),
    piece: (count: number) => plural(count, 'piece'),
    bottle: (count: number) => plural(count, 'bottle'),
  },
  packs: (count: number, units: number, unit: Unit) =>
    units === 1 ? plural(count, unit) : `${plural(count, 'pack')} of ${units}`,
  kinds: {
    paper: 'Paper',
    adhesive: 'Tape and glue',
    ribbon: 'Ribbon and twine',
    extras: 'Extras',
    contents: 'Contents',
  },
  freeOf: (count: number) => `${count} of them free`,
  share: (kind: string, total: string, perFavor: string) => `${kind}: ${total}, ${perFavor} per favor`,
  perFavor: (total: string, favors: number, each: string) =>
    `${total} ÷ ${plural(favors, 'favor')} = ${each}`,
};
