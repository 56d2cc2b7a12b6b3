import { BOLD_WIDTHS, LETTERS, REGULAR_WIDTHS } from './letter-widths';

const PLACE = new Map(Array.from(LETTERS, (letter, place) => [letter, place]));

/** Height of a capital letter over the type size. source: OS/2 sCapHeight of the faces in public/fonts (2048 units an em: 1490). */
export const CAP_HEIGHT = 0.7275;

/** The text as the embedded face writes it: a letter it lacks is given by its parts or without its accent, else as "?". */
export const writable = (text: string): string => Array.from(text.normalize('NFC'), written).join('');

/** Letters of a text that the embedded face cannot write in any way, each once, in order; marks go with the letter they stand on. */
export const unwritable = (text: string): readonly string[] => [
  ...new Set(
    Array.from(new Intl.Segmenter().segment(text.normalize('NFC')), ({ segment }) => segment).filter(
      (letter) => Array.from(letter).some((part) => part !== '?' && written(part) === '?'),
    ),
  ),
];

function written(letter: string): string {
  if (PLACE.has(letter)) return letter;
  // Letters that are never seen, marks that stood on the letter before, and breaks of a line.
  if (/[\p{Default_Ignorable_Code_Point}\p{Cc}]/u.test(letter)) return '';
  const parts = Array.from(letter.normalize('NFKC'));
  if (parts.every((part) => PLACE.has(part))) return parts.join('');
  const [plain = '?'] = letter.normalize('NFD');
  return PLACE.has(plain) ? plain : '?';
}

/** How wide a line of text runs, in mm, for a type size in mm; letters side by side, no kerning, as the PDF sets them. */
export function textWidthMm(text: string, sizeMm: number, bold = false): number {
  const widths = bold ? BOLD_WIDTHS : REGULAR_WIDTHS;
  let thousandths = 0;
  for (const letter of text)
    for (const set of PLACE.has(letter) ? letter : written(letter))
      thousandths += widths[PLACE.get(set) ?? 0] ?? 0;
  return (thousandths * sizeMm) / 1000;
}

/** Breaks text into lines no wider than `widthMm`, at spaces; a single word that is too long is broken where it must be. */
export function wrapText(text: string, widthMm: number, sizeMm: number, bold = false): string[] {
  return text.split('\n').flatMap((paragraph) => wrapParagraph(paragraph, widthMm, sizeMm, bold));
}

function wrapParagraph(paragraph: string, widthMm: number, sizeMm: number, bold: boolean): string[] {
  const fits = (line: string) => textWidthMm(line, sizeMm, bold) <= widthMm;
  const lines: string[] = [];
  let line = '';
  for (const word of paragraph.split(' ').filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const letter of word) {
      if (line !== '' && !fits(line + letter)) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  lines.push(line);
  return lines;
}
