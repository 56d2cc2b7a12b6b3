import type { DressingWords } from '../../ui/words/dressing-words';

export const dressingMessages: DressingWords = {
  noRecipe: 'There is no box here yet',
  dressingOf: (name) => `Dressing of ${name}`,
};
