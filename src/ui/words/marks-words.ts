import type { Naming, Texts } from './texts';

/** Texts of the Marks page. */
export type MarksWords = Texts<'noRecipe'> & { readonly marksOf: Naming };
