import type { MakingWords } from '../../ui/words/making-words';
import { plural } from './plural';

export const benchMessages: MakingWords['bench'] = {
  noRecipe: 'No box to make yet',
  toRecipe: 'Add one on the Count page',
  noCard: 'No steps for this box yet',
  mendFirstWhy: 'These steps would make a box that doesn’t close. See Size for what to fix.',
  toBox: 'Open the Size page',
  piece: 'Piece',
  way: 'Show steps',
  oneByOne: 'One by one',
  asList: 'As a list',
  back: 'Back',
  next: 'Next',
  again: 'Start over',
  tip: 'Tip:',
  caution: 'Take care:',
  template: 'Template points',
  printCard: 'Print the step card',
  printRoomy: 'Print it large, with big pictures',
  mendFirst: (count) => `Fix ${plural(count, 'problem')} first`,
  making: (count, recipe) => `Make ${count} of ${recipe}.`,
  stepOf: (step, of) => `Step ${step} of ${of}`,
  kinds: {
    blank: 'cut to size',
    score: 'score',
    slit: 'slit',
    cut: 'cut away',
    fold: 'fold',
    glue: 'glue',
    close: 'close',
  },
};
