import type { LengthUnit } from '../src/core/units';
import type { Supply } from './workbook';

type Tape = Extract<Supply, { readonly kind: 'tape' | 'ribbon' | 'twine' }>;

/** A roll of tape as its label has it; a price of 0 stands for none named. */
export type HeardTape = Pick<Tape, 'widthMm' | 'rollMm' | 'priceMinor'>;

/** source: definition of the inch (25.4 mm), foot and yard, and of the SI prefixes */
const UNIT_MM: readonly (readonly [RegExp, number])[] = [
  [/^(?:in|inch|inches|["”″])$/i, 25.4],
  [/^mm$/i, 1],
  [/^cm$/i, 10],
  [/^(?:yd|yds|yard|yards)$/i, 914.4],
  [/^(?:ft|foot|feet|['’′])$/i, 304.8],
  [/^(?:m|meters?|metres?)$/i, 1000],
];
const LENGTH =
  /(?:(?:(\d+)[ -])?(\d+)\/(\d+)|(\d+(?:[.,]\d+)?))\s?-?(inch(?:es)?|in\b|["”″]|mm\b|cm\b|yards?\b|yds?\b|foot\b|feet\b|ft\b|['’′]|met(?:er|re)s?\b|m\b)?/giu;
const PRICE = /[$€£]\s?(\d{1,5}(?:[.,]\d{1,2})?)|(\d{1,5}[.,]\d{2})(?=\s*$)/;
/** Wider is no tape that a box is joined with, and a shorter roll is none. source: our choice */
const WIDEST_MM = 120;
const SHORTEST_MM = 500;

/**
 * A roll of tape typed in one go: `1/4 in x 27 yd, $3.99`. The shorter length is its width; a width without a unit is in `unit`. Null where
 * no width and length of a roll can be read.
 */
export function readTape(text: string, unit: LengthUnit): HeardTape | null {
  const price = PRICE.exec(text);
  const amount = price?.[1] ?? price?.[2];
  const lengths = [...text.replace(PRICE, ' ').matchAll(LENGTH)].map(
    ([, whole = '0', over, under, plain = '0', named]) => {
      const size =
        over === undefined ? Number(plain.replace(',', '.')) : Number(whole) + Number(over) / Number(under);
      const each = UNIT_MM.find(([pattern]) => named !== undefined && pattern.test(named))?.[1];
      return size * (each ?? (unit === 'in' ? 25.4 : 1));
    },
  );
  if (lengths.length !== 2 || !lengths.every((mm) => Number.isFinite(mm) && mm > 0)) return null;
  const [widthMm = 0, rollMm = 0] = lengths.toSorted((a, b) => a - b);
  if (widthMm > WIDEST_MM || rollMm < SHORTEST_MM || rollMm > 1_000_000) return null;
  return {
    widthMm,
    rollMm,
    priceMinor: amount === undefined ? 0 : Math.round(Number(amount.replace(',', '.')) * 100),
  };
}
