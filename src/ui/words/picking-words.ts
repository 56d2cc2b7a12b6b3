import { createContext, use } from 'react';
import type { pickingMessages } from './english/picking';
import type { Wording } from './wording';

/** The texts of the page where a new box begins. */
export type PickingWords = Wording<typeof pickingMessages>;

const PickingWordsContext = createContext<PickingWords | null>(null);
export const PickingWordsProvider = PickingWordsContext.Provider;

/** The texts of the page where a new box begins; they come with it. */
export function usePickingWords(): PickingWords {
  const words = use(PickingWordsContext);
  if (words === null) throw new Error('no texts for picking a box are provided above this part');
  return words;
}
