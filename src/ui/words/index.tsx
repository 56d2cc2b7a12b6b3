import { createContext, use } from 'react';
import type { FrameWords } from './frame-words';
import type { MakingWords } from './making-words';
import type { PartWords } from './part-words';
import type { ShelfWords } from './shelf-words';

/** Every text of the app that is not a maker's own or a sentence of the core; one language supplies all of it. */
export interface Words extends PartWords, FrameWords, ShelfWords, MakingWords {
  /** For numbers, dates and money. */
  readonly locale: string;
}

const WordsContext = createContext<Words | null>(null);
export const WordsProvider = WordsContext.Provider;

/** The texts in the maker's language. */
export function useWords(): Words {
  const words = use(WordsContext);
  if (words === null) throw new Error('no language is provided above this part');
  return words;
}
