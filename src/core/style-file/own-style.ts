import type { Recipe } from '../rows/recipe';
import { cleanNote } from '../rows/text';
import { type BoxStyle, bringStyle, dropStyle, styleById } from '../styles';
import { readStyle, type StyleReading } from './read-style';

/** What a style of the maker's own is called here: made from its text, so that the same text is the same style on every device. */
export const ownStyleId = (text: string): string =>
  `own-${[1, 2, 3].map((seed) => fingerprint(text, seed)).join('')}`;

/** Sums a text up in 32 bits, as letters and figures. Source: Fowler, Noll and Vo, FNV-1a, from memory; it tells texts apart, and stops no forger. */
function fingerprint(text: string, seed: number): string {
  let sum = 0x811c9dc5 ^ Math.imul(seed, 0x9e3779b1);
  for (let at = 0; at < text.length; at++) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193);
  return (sum >>> 0).toString(36).padStart(7, '0');
}

/** Texts read already, since a shelf may hold one style in many boxes. */
const read = new Map<string, BoxStyle | null>();

/** Makes the style of this text known; null where it can't be read. */
export function bringOwnStyle(text: string): BoxStyle | null {
  const known = read.get(text);
  if (known !== undefined) return known;
  const id = ownStyleId(text);
  const reading = styleById(id) === undefined ? readStyle(text, id) : null;
  const style = reading?.ok ? reading.style : null;
  if (style) bringStyle(style);
  read.set(text, style);
  return style;
}

/** Forgets the style of this text. Whoever meets the text again reads it again. */
export function dropOwnStyle(text: string): void {
  const style = read.get(text);
  read.delete(text);
  if (style) dropStyle(style.id);
}

/** A style from a file somebody hands in, made known, with the text that a box keeps of it: the same file without its blank space. */
export function readOwnStyle(
  file: string,
): { readonly ok: true; readonly style: BoxStyle; readonly text: string } | Refused {
  const reading = readStyle(file);
  if (!reading.ok) return reading;
  const text = cleanNote(JSON.stringify(JSON.parse(file.replace(/^\uFEFF/, ''))));
  const style = bringOwnStyle(text);
  return style ? { ok: true, style, text } : NOT_KEPT;
}

type Refused = Extract<StyleReading, { readonly ok: false }>;

/** Letters that a saved box does not keep were part of its meaning. */
const NOT_KEPT: Refused = {
  ok: false,
  refusals: [
    {
      code: 'not-kept',
      path: '',
      facts: {},
      says: 'This file holds letters that can’t be saved with a box.',
      remedy: 'Take out control characters and letters that turn the direction of writing.',
    },
  ],
};

/** Makes known every style that these boxes bring with them. A box that names its style otherwise than its text does keeps an unknown style. */
export function bringStylesOf(recipes: Iterable<Pick<Recipe, 'ownStyle'>>): void {
  for (const { ownStyle } of recipes) if (ownStyle !== undefined) bringOwnStyle(ownStyle);
}
