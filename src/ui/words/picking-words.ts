import { createContext, use } from 'react';
import type { StyleMerit } from '../../core/plan/event/style-facts';
import type { Count, Texts } from './texts';

/** The texts of the page where a new box begins. */
export interface PickingWords
  extends Texts<
    | 'care'
    | 'looking'
    | 'showAll'
    | 'noneMatch'
    | 'ownSize'
    | 'ownSizeHelp'
    | 'width'
    | 'depth'
    | 'height'
    | 'widthHelp'
    | 'depthHelp'
    | 'heightHelp'
    | 'sheet'
    | 'sheetHelp'
    | 'letter'
    | 'tooLarge'
    | 'ownNet'
    | 'ownNetWhy'
    | 'bringIn'
    | 'refused'
    | 'asks'
    | 'drawing'
    | 'unit'
    | 'unitHelp'
    | 'make'
    | 'leave'
    | 'newName'
  > {
  readonly families: Readonly<Record<'tall-lid' | 'tall' | 'low-lid' | 'tray' | 'flat', Count>>;
  readonly merits: Readonly<Record<StyleMerit, string>>;
  readonly kinds: Texts<'C' | 'V' | 'M' | 'F'>;
  readonly units: Texts<'mm' | 'cm' | 'in' | 'pt' | 'm' | 'um'>;
  readonly matching: (count: number, of: number) => string;
  readonly sheetsPerFavor: (count: number) => string;
  readonly line: (number: string, length: string) => string;
  readonly stillOpen: Count;
  readonly ready: (pieces: readonly string[]) => string;
}

const PickingWordsContext = createContext<PickingWords | null>(null);
export const PickingWordsProvider = PickingWordsContext.Provider;

/** The texts of the page where a new box begins; they come with it. */
export function usePickingWords(): PickingWords {
  const words = use(PickingWordsContext);
  if (words === null) throw new Error('no texts for picking a box are provided above this part');
  return words;
}
