import type { ContentsWords } from '../../ui/words/contents-words';

export const contentsMessages: ContentsWords = {
  noRecipe: 'There is no box here yet',
  contentsOf: (name) => `Contents of ${name}`,
};
