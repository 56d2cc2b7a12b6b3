import type { Count, Naming, Texts } from './texts';

/** Texts of the Handout page. */
export type HandoutWords = Texts<
  | 'noRecipe'
  | 'noRecipeWhy'
  | 'toEvent'
  | 'mendFirst'
  | 'yours'
  | 'tips'
  | 'tipsWhy'
  | 'addTip'
  | 'tip'
  | 'tipAt'
  | 'wholeBox'
  | 'removeTip'
  | 'difficulty'
  | 'workedOut'
  | 'firstBox'
  | 'somePractice'
  | 'patience'
  | 'credits'
  | 'creditsHelp'
  | 'photos'
  | 'photosWhy'
  | 'addPhoto'
  | 'photoName'
  | 'removePhoto'
  | 'photoRefused'
  | 'says'
  | 'youNeed'
  | 'cut'
  | 'care'
  | 'steps'
  | 'print'
  | 'page'
  | 'learners'
  | 'learnersHow'
  | 'share'
  | 'shareWhy'
  | 'copy'
  | 'copied'
  | 'notCopied'
  | 'code'
> & {
  readonly handoutOf: Naming;
  readonly tooLong: Count;
  readonly stepAt: (step: number, says: string) => string;
};
