import type { MarksWords } from '../../ui/words/marks-words';

export const marksMessages: MarksWords = {
  noRecipe: 'There is no box here yet',
  marksOf: (name) => `Marks of ${name}`,
};
