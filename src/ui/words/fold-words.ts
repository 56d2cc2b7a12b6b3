import type { Count, Naming, Texts } from './texts';

/** Texts of the page that folds the box. */
export type FoldWords = Texts<
  | 'noRecipe'
  | 'noRecipeWhy'
  | 'toEvent'
  | 'stage'
  | 'turnHelp'
  | 'closing'
  | 'back'
  | 'forward'
  | 'play'
  | 'stop'
  | 'closer'
  | 'farther'
  | 'asAtFirst'
  | 'piece'
  | 'flat'
  | 'steps'
  | 'look'
  | 'contents'
  | 'dressing'
  | 'arrows'
  | 'rulers'
  | 'cutOpen'
  | 'sides'
  | 'outsideFace'
  | 'insideFace'
  | 'sizes'
  | 'outside'
  | 'inside'
  | 'angles'
  | 'panel'
  | 'angle'
  | 'drawnInstead'
  | 'width'
  | 'depth'
  | 'height'
  | 'dressed'
> & {
  readonly pictureOf: (piece: string, state: string) => string;
  readonly place: (step: number, of: number) => string;
  readonly underWay: (step: number, of: number, percent: number) => string;
  readonly closed: Count;
  readonly act: Naming;
  readonly degrees: Count;
};
