import type { HandoutWords } from '../../ui/words/handout-words';

export const handoutMessages: HandoutWords = {
  noRecipe: 'There is no box here yet',
  handoutOf: (name) => `Handout of ${name}`,
};
