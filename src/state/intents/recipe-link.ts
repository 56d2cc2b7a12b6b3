import { type LinkWriting, type SentToo, writeLink } from '../../../shared/share-link';
import { fileOf } from '../keeping/export-file';
import type { Shelf } from '../shelf';

/** A recipe with what it needs as the fragment of a link; null if there is no such recipe. */
export function linkOfRecipe(shelf: Shelf, id: string, sentToo: SentToo = {}): LinkWriting | null {
  const file = fileOf(shelf, { kind: 'recipe', id });
  return file && writeLink(file, sentToo);
}

/** The whole address that brings a recipe, beside where the app stands now; null where it would be too long. */
export function addressOfRecipe(shelf: Shelf, id: string, here: string): string | null {
  const link = linkOfRecipe(shelf, id);
  return link?.ok ? `${here.replace(/#.*$/, '')}#${link.fragment}` : null;
}
