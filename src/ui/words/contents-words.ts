import type { Naming, Texts } from './texts';

/** Texts of the Contents page. */
export type ContentsWords = Texts<'noRecipe'> & { readonly contentsOf: Naming };
