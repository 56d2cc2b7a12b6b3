import { createContext, use } from 'react';
import type { RefusalCode } from '../../shared/refusals';
import type { Finding } from '../core/checks/finding';
import type { LineInk } from '../core/draw/net-lines';
import type { LengthUnit, StrongEcho } from '../core/units';
import type { PageName } from './pages';
import type { Saving } from './save-state';

type Texts<Key extends string> = Readonly<Record<Key, string>>;
type Count = (count: number) => string;
type With = (name: string) => string;

/** Parts that any page may use. */
interface PartWords {
  readonly field: Texts<'fractions' | 'notYet'> & {
    readonly use: With;
    readonly tooShort: (said: string, limit: string) => string;
    readonly tooLong: (said: string, limit: string) => string;
    readonly between: (off: string, markIsLonger: boolean) => string;
    readonly heard: Readonly<Record<StrongEcho, (typed: string, said: string) => string>>;
    readonly numberBetween: (least: string, most: string) => string;
    readonly oneMore: With;
    readonly oneFewer: With;
  };
  readonly drawing: Texts<
    | 'view'
    | 'closer'
    | 'farther'
    | 'whole'
    | 'line'
    | 'fromLeft'
    | 'fromTop'
    | 'gap'
    | 'slanted'
    | 'curved'
    | 'legend'
  > & { readonly allIn: (unit: LengthUnit) => string };
  readonly lines: Readonly<Record<LineInk, string>>;
  readonly findings: Texts<'title'> & {
    readonly severity: Readonly<Record<Finding['severity'], string>>;
    readonly mend: (size: string, value: string) => string;
  };
  readonly saving: Readonly<Record<Saving, string>>;
  readonly refusals: Readonly<Record<RefusalCode, (found: string, expected: string) => string>>;
}

interface FrameWords {
  readonly frame: Texts<
    | 'product' | 'toShelf' | 'toPage' | 'pages' | 'undo' | 'redo' | 'unit' | 'inches' | 'millimetres' | 'theme' | 'light'
    | 'dark' | 'system' | 'more' | 'name' | 'loading' | 'broken' | 'brokenRemedy' | 'again' | 'notFound' | 'notFoundWhy'
  >; // biome-ignore format: list
  readonly pages: Readonly<Record<PageName, string>>;
  readonly needs: Texts<'pickStyle' | 'howMany' | 'needsCount' | 'mend'> & {
    readonly sheets: Count;
    readonly buy: Count;
    readonly nothingToBuy: string;
    readonly steps: Count;
    readonly mends: Count;
    readonly favors: (asked: number, spares: number) => string;
  };
}

/** Every text of the app that is not a maker's own or a sentence of the core; one language supplies all of it. */
export interface Words extends PartWords, FrameWords {}

const WordsContext = createContext<Words | null>(null);
export const WordsProvider = WordsContext.Provider;

/** The texts in the maker's language. */
export function useWords(): Words {
  const words = use(WordsContext);
  if (words === null) throw new Error('no language is provided above this part');
  return words;
}
