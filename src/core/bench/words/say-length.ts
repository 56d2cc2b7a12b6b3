import {
  isOnMark,
  printLength,
  type Ruler,
  spellLength,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  type Ticks,
  ticks,
} from '../../units';
import type { BenchPoint } from '../types';

/** `3 1/2 in`; between marks the nearest one, which way it leans, and the whole truth: `3 1/2 in full (88.925 mm)`; far from all marks `245.4 mm`. */
export function sayLength(length: Ticks, ruler: Ruler): string {
  const { text, exact, lean } = printLength(length, ruler);
  if (exact) return text;
  return lean === null ? spellLength(length, ruler.unit) : `${text} ${lean} (${spellLength(length, 'mm')})`;
}

/** `3 1/2, 5, 8 1/2 and 10 in`; the unit is said once if every length is on its mark. */
export function sayLengths(lengths: readonly Ticks[], ruler: Ruler): string {
  const printed = lengths.map((length) => printLength(length, ruler));
  const said = lengths.map((length) => sayLength(length, ruler));
  if (!printed.every(({ exact }) => exact)) return sayList(said);
  const bare = said.map((text) => text.slice(0, -ruler.unit.length - 1));
  return `${sayList(bare)} ${ruler.unit}`;
}

/** `a, b and c`. */
export function sayList(parts: readonly string[]): string {
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`;
}

/** As finely as a place to cut to is named by itself; finer than that, as `sayLength` has it. source: common practice, no source */
const NAMED = { in: ticks(TICKS_PER_INCH / 32), mm: ticks(TICKS_PER_MM / 10) };

/** `3 1/4 × 17/32`, `2 1/8 full (54.334) × 1`: across from the fence, then up from the near edge; millimeters in brackets. */
export const sayPlace = ({ x, y }: BenchPoint, ruler: Ruler): string =>
  [x, y]
    .map((length) =>
      isOnMark(length, NAMED[ruler.unit]) ? spellLength(length, ruler.unit) : sayLength(length, ruler),
    )
    .map((said) => said.replace(/ (in|mm)(?=$| full| scant)/, '').replace(' mm)', ')'))
    .join(' × ');
