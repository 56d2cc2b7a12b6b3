import type { MakingWords } from '../../ui/words/making-words';
import { plural } from './plural';

export const benchMessages: MakingWords['bench'] = {
  noRecipe: 'There is no box to make yet',
  toRecipe: 'Put one on the list',
  noCard: 'There is no card for this box',
  mendFirstWhy: 'A card made now would lead to a box that does not close. The Size page says what to change.',
  toBox: 'Open the Size page',
  piece: 'Piece',
  way: 'How the steps are shown',
  oneByOne: 'One by one',
  asList: 'As a list',
  back: 'Back',
  next: 'Next',
  again: 'From the start',
  tip: 'Tip:',
  caution: 'Take care:',
  template: 'Points of the template',
  printCard: 'Print the card',
  mendFirst: (count) => `The box has ${plural(count, 'thing')} to mend first`,
  making: (count, recipe) => `Make ${count} of ${recipe}.`,
  stepOf: (step, of) => `Step ${step} of ${of}`,
  kinds: {
    blank: 'cut the blank',
    score: 'score',
    slit: 'slit',
    cut: 'cut away',
    fold: 'fold',
    glue: 'glue',
    close: 'close',
  },
};
