import { createContext, use } from 'react';
import type { Ink } from '../../core/draw/strokes/types';
import type { GlossaryEntries, GlossaryNames } from './glossary-words';
import type { KeyWords } from './key-words';
import type { Texts } from './texts';

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
type ToldInk = (typeof TOLD_INKS)[number];

/** Texts of the page of words and lines. */
export interface HelpWords
  extends Texts<
    | 'title'
    | 'why'
    | 'toShelf'
    | 'lines'
    | 'linesWhy'
    | 'line'
    | 'looks'
    | 'hands'
    | 'net'
    | 'netWhy'
    | 'words'
    | 'keys'
  > {
  readonly ofLine: Readonly<Record<ToldInk, { readonly looks: string; readonly hands: string }>>;
  readonly ofKeys: KeyWords;
  /** In the order of the alphabet of the language. */
  readonly names: GlossaryNames;
  readonly entries: GlossaryEntries;
}

const HelpWordsContext = createContext<HelpWords | null>(null);
export const HelpWordsProvider = HelpWordsContext.Provider;

/** The texts of the page of words and lines; they come with it. */
export function useHelpWords(): HelpWords {
  const words = use(HelpWordsContext);
  if (words === null) throw new Error('no texts of words and lines are provided above this part');
  return words;
}
