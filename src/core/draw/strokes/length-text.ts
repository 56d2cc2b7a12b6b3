import { isOnMark, printLength, type Ruler } from '../../units';
import type { Ticks } from '../../units/ticks';
import { setFractions } from './set-fractions';

/** A length as a drawing writes it: the bare number on the maker's marks, and a smaller line below. */
export interface LengthText {
  /** `3½`, without the unit: a drawing says its unit once. */
  readonly number: string;
  /** `88.9 mm`, or `scant, 88.6 mm` where the length lies between marks. */
  readonly below: string;
  readonly onMark: boolean;
}

/** A length for a drawing, on a ruler's marks. */
export function lengthText(length: Ticks, ruler: Ruler): LengthText {
  const { typographic, lean, other: plain } = printLength(length, ruler);
  const other = setFractions(plain);
  return {
    number: typographic.replace(/ (in|mm)$/, ''),
    below: lean === null ? other : `${ruler.leans?.[lean] ?? lean}, ${other}`,
    onMark: isOnMark(length, ruler.finest),
  };
}

/** A length in a sentence: `3½ in`, `scant 3½ in` between marks. */
export function lengthWords(length: Ticks, ruler: Ruler): string {
  const { typographic, lean } = printLength(length, ruler);
  return lean === null ? typographic : `${ruler.leans?.[lean] ?? lean} ${typographic}`;
}

/** Two sides of a rectangle: `4½ × 11 in`. */
export const sizeWords = (across: Ticks, up: Ticks, ruler: Ruler): string =>
  `${lengthWords(across, ruler).replace(/ (in|mm)$/, '')} × ${lengthWords(up, ruler)}`;
