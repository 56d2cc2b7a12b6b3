import { createContext, use } from 'react';
import type { frontDoorMessages } from './english/front-door';
import type { Wording } from './wording';

/** The texts of the page that asks what goes in. */
export type FrontDoorWords = Wording<typeof frontDoorMessages>;

const FrontDoorWordsContext = createContext<FrontDoorWords | null>(null);
export const FrontDoorWordsProvider = FrontDoorWordsContext.Provider;

export function useFrontDoorWords(): FrontDoorWords {
  const words = use(FrontDoorWordsContext);
  if (words === null) throw new Error('no texts for the front door are provided above this part');
  return words;
}
