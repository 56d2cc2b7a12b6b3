import { createContext, use } from 'react';
import type { Closing, Rank } from '../../core/answers';
import type { StyleMerit } from '../../core/plan/event/style-facts';
import type { WeightSaying } from './shelf-words';
import type { Count, Texts } from './texts';

/** The texts of the page that asks what goes in. */
export interface FrontDoorWords
  extends Texts<
    | 'title'
    | 'why'
    | 'item'
    | 'itemHelp'
    | 'measured'
    | 'size'
    | 'sizeHelp'
    | 'sizeUnread'
    | 'each'
    | 'eachHelp'
    | 'favors'
    | 'favorsHelp'
    | 'paper'
    | 'paperHelp'
    | 'typed'
    | 'typedPaper'
    | 'typedHelp'
    | 'typedUnread'
    | 'tool'
    | 'toolHelp'
    | 'noTool'
    | 'matters'
    | 'must'
    | 'answers'
    | 'needsSize'
    | 'needsPaper'
    | 'looking'
    | 'stop'
    | 'nothing'
    | 'nothingFiltered'
    | 'knowShape'
    | 'make'
    | 'noPrice'
    | 'watch'
    | 'newBox'
    | 'plainGoods'
  > {
  readonly ranks: Readonly<Record<Rank, string>>;
  readonly merits: Readonly<Record<StyleMerit, string>>;
  readonly closings: Readonly<Record<Closing, string>>;
  readonly tools: Texts<'trimmer' | 'board' | 'metric'>;
  readonly sheets: (count: number, atLeast: number) => string;
  readonly perSheet: Count;
  readonly minutes: Count;
  readonly cost: (money: string) => string;
  readonly finest: (mark: string) => string;
  readonly fits: (spare: string) => string;
  readonly glued: Count;
  readonly found: (boxes: number, done: number, of: number) => string;
  readonly sold: (sheet: string, gsm: number) => string;
  readonly heard: (sheet: string, ways: Parameters<WeightSaying>[0]) => string;
}

const FrontDoorWordsContext = createContext<FrontDoorWords | null>(null);
export const FrontDoorWordsProvider = FrontDoorWordsContext.Provider;

export function useFrontDoorWords(): FrontDoorWords {
  const words = use(FrontDoorWordsContext);
  if (words === null) throw new Error('no texts for the front door are provided above this part');
  return words;
}
