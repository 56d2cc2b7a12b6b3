import type { PicturedWord } from '../../core/draw/strokes/word-pictures';

/** Words of the trade that are explained, in the order of the alphabet in English. */
export type GlossaryWord = PicturedWord | 'burnish' | 'roughness';

/** Each word as it is written; known to every page, since pages lead to what it means. */
export type GlossaryNames = Readonly<Record<GlossaryWord, string>>;

/** What a word means and, where it has a picture, what the picture shows. */
export type GlossaryEntries = {
  readonly [W in GlossaryWord]: W extends PicturedWord
    ? { readonly says: string; readonly shows: string }
    : { readonly says: string };
};
