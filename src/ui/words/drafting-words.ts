import { createContext, use } from 'react';
import type { draftingMessages } from './english/drafting';
import type { Wording } from './wording';

/** The texts of the page where a maker draws a style. */
export type DraftingWords = Wording<typeof draftingMessages>;

const DraftingWordsContext = createContext<DraftingWords | null>(null);
export const DraftingWordsProvider = DraftingWordsContext.Provider;

/** The texts of the page where a style is drawn; they come with it. */
export function useDraftingWords(): DraftingWords {
  const words = use(DraftingWordsContext);
  if (words === null) throw new Error('no texts for drawing a style are provided above this part');
  return words;
}
