/**
 * A note as it is kept: control characters and direction overrides (U+202A–202E, U+2066–2069) are taken out, so that what is
 * shown is what is stored; half a surrogate pair becomes U+FFFD. Line breaks and tabs stay.
 */
export const cleanNote = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(/(?![\n\t])[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu, '')
    .replace(/\p{Surrogate}/gu, '\uFFFD');

/** A name or other single line as it is kept: a cleaned note with its line breaks and tabs turned into spaces. */
export const cleanLine = (text: string): string => cleanNote(text).replace(/[\n\t]/g, ' ');
