import { createContext, use } from 'react';
import type { keepingMessages } from './english/keeping';
import type { Wording } from './wording';

/** The texts of the page of safe keeping. */
export type KeepingWords = Wording<typeof keepingMessages>;

const KeepingWordsContext = createContext<KeepingWords | null>(null);
export const KeepingWordsProvider = KeepingWordsContext.Provider;

/** The texts of the page of safe keeping; they come with it. */
export function useKeepingWords(): KeepingWords {
  const words = use(KeepingWordsContext);
  if (words === null) throw new Error('no texts of safe keeping are provided above this part');
  return words;
}
