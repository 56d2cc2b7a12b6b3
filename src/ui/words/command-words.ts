import type { Texts } from './texts';

/** Texts of the list of everything that can be done. */
export interface CommandWords
  extends Texts<
    | 'find'
    | 'findHelp'
    | 'none'
    | 'close'
    | 'keys'
    | 'keysWhy'
    | 'toKeys'
    | 'keepNow'
    | 'newBox'
    | 'keeping'
    | 'thisList'
    | 'theseKeys'
    | 'fieldUp'
    | 'fieldUpMore'
    | 'fieldBack'
    | 'fieldTake'
    | 'zoomIn'
    | 'zoomOut'
    | 'zoomWhole'
  > {
  readonly kinds: Readonly<Record<'act' | 'page' | 'place' | 'event' | 'recipe', string>>;
  readonly measureIn: (unit: string) => string;
  readonly found: (count: number) => string;
}
