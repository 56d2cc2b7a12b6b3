import type { Naming, Texts } from './texts';

/** Texts of the Handout page. */
export type HandoutWords = Texts<'noRecipe'> & { readonly handoutOf: Naming };
