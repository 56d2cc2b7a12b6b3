import { centredText, lineMark, textMark } from '../core/draw/marks';
import type { At, Mark } from '../core/draw/types';
import { TYPE_MM } from './print-document';

const BARS = [
  { lengthMm: 100, words: '100 mm' },
  { lengthMm: 101.6, words: '4 in' }, // source: 25.4 mm to the inch by definition
] as const;
const TICK_MM = 2;
const APART_MM = 8;

/** Said beside every pair of bars. source: "fit" shrinks by 3 to 6 %, print guides. */
export const TRUE_SCALE_WORDS =
  'Print at 100 %, not fit. Measure both bars: if either is off, do not cut by this page.';

/**
 * 100 mm and 4 in, once across and once up, as an L: `corner` is where the two meet, mm on the page. `stretch` makes up for a printer that
 * was measured short or long (1 is a true printer).
 */
export function drawScaleBars(
  [x, y]: At,
  stretch: { readonly across: number; readonly up: number } = { across: 1, up: 1 },
): Mark[] {
  return BARS.flatMap(({ lengthMm, words }, i) => [
    ...bar(
      lengthMm * stretch.across,
      words,
      (along, off) => [x + APART_MM * 2 + along, y + i * APART_MM + off],
      0,
    ),
    ...bar(
      lengthMm * stretch.up,
      words,
      (along, off) => [x + i * APART_MM - off, y + APART_MM * 2 + along],
      90,
    ),
  ]);
}

/** Room that the L takes, across and up. */
export const SCALE_BARS_MM = APART_MM * 2 + 101.6;

function bar(
  lengthMm: number,
  words: string,
  at: (along: number, off: number) => At,
  turnDeg: 0 | 90,
): Mark[] {
  return [
    lineMark('guide', [at(0, 0), at(lengthMm, 0)], `bar ${words} ${turnDeg === 0 ? 'across' : 'up'}`),
    ...[0, lengthMm].map((end) => lineMark('guide', [at(end, -TICK_MM), at(end, TICK_MM)])),
    centredText(words, at(lengthMm / 2, 2.2), TYPE_MM.small, { turnDeg }),
  ];
}

export const trueScaleNote = (at: At): Mark => textMark(TRUE_SCALE_WORDS, at, TYPE_MM.small);
