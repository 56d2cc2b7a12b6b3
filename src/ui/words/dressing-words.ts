import type { Naming, Texts } from './texts';

/** Texts of the Dressing page. */
export type DressingWords = Texts<'noRecipe'> & { readonly dressingOf: Naming };
