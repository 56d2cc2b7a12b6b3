import { createContext, use } from 'react';
import type { Ink } from '../../core/draw/strokes/types';
import type { helpMessages } from './english/help';
import type { Wording } from './wording';

/** Lines that are explained; the others are only helpers of a drawing. */
export const TOLD_INKS = [
  'cut',
  'score-valley',
  'score-mountain',
  'score-flat',
  'slit',
  'glue',
  'glue-below',
  'bare',
  'covered',
  'waste',
  'bleed',
  'edge',
  'offcut',
  'grain',
  'dimension',
  'move',
] as const satisfies readonly Ink[];

/** Texts of the page of words and lines. */
export type HelpWords = Wording<typeof helpMessages>;

const HelpWordsContext = createContext<HelpWords | null>(null);
export const HelpWordsProvider = HelpWordsContext.Provider;

/** The texts of the page of words and lines; they come with it. */
export function useHelpWords(): HelpWords {
  const words = use(HelpWordsContext);
  if (words === null) throw new Error('no texts of words and lines are provided above this part');
  return words;
}
