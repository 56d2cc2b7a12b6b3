import { createContext, use, useMemo } from 'react';
import type { frameMessages } from './english/frame';
import type { makingMessages } from './english/making';
import type { partMessages } from './english/parts';
import type { shelfMessages } from './english/shelf';
import { type Say, type Spoken, sayIn } from './spoken';
import type { Wording } from './wording';

/** The texts that are there at once: round every page, of the parts, of the shelf. One language supplies all of it. */
export interface Words extends Wording<typeof partMessages & typeof frameMessages & typeof shelfMessages> {
  /** For numbers, dates and money. */
  readonly locale: string;
  /** What the core and its tables say. */
  readonly spoken: Spoken;
}

/** All texts; those of the pages of a workbook come with the first of them that is opened. */
export interface PageWords extends Words, Wording<typeof makingMessages> {}

const WordsContext = createContext<Words | null>(null);
export const WordsProvider = WordsContext.Provider;

/** The texts in the maker's language. */
export function useWords(): Words {
  const words = use(WordsContext);
  if (words === null) throw new Error('no language is provided above this part');
  return words;
}

/** Words and templates of the core in the maker's language. */
export function useSay(): Say {
  const words = useWords();
  return useMemo(() => sayIn(words), [words]);
}

const PageWordsContext = createContext<PageWords | null>(null);
export const PageWordsProvider = PageWordsContext.Provider;

/** The same with the texts of a workbook's pages; for what stands on such a page. */
export function usePageWords(): PageWords {
  const words = use(PageWordsContext);
  if (words === null) throw new Error('no workbook is open above this part');
  return words;
}
