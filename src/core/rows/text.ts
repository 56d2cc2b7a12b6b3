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

/** Whether a line shows anything: not only spaces, marks without a letter, and letters that are never seen. source: Unicode, Default_Ignorable_Code_Point; U+2800 and U+3164 are blank by design */
export const isSeen = (line: string): boolean =>
  /[^\p{White_Space}\p{M}\p{C}\p{Default_Ignorable_Code_Point}\u2800\u3164\uFFA0]/u.test(line);

/** Names that one system or another keeps for its devices. source: Windows, "Naming files", from memory */
const DEVICE = /^(?:con|prn|aux|nul|(?:com|lpt)\d)$/;
/** Most bytes of a stem in UTF-8; the name of a file may have 255 on most disks, and more is put behind it. */
const MOST_STEM_BYTES = 150;

/** A file name from a maker's own title: letters and figures of any script in lower case, and hyphens; `fallback` when nothing is left. */
export function fileStem(title: string, fallback: string): string {
  const words = title
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^[-\p{M}]+|-+$/gu, '');
  let stem = '';
  let bytes = 0;
  for (const letter of words) {
    bytes += bytesOf(letter.codePointAt(0) ?? 0);
    if (bytes > MOST_STEM_BYTES) break;
    stem += letter;
  }
  stem = stem.replace(/-+$/, '');
  return DEVICE.test(stem) ? `${stem}-1` : stem || fallback;
}

/** source: UTF-8, RFC 3629 */
const bytesOf = (code: number): number => (code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x1_0000 ? 3 : 4);
