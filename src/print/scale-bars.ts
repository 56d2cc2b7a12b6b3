import { centredText, lineMark } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import type { At } from '../core/plane';
import { TYPE_MM } from './print-document';

/** How much longer than life to print, across and up the page: makes up for a printer that was measured short. 1 is a true printer. */
export interface Stretch {
  readonly across: number;
  readonly up: number;
}

export const TRUE_PRINTER: Stretch = { across: 1, up: 1 };

// source: 25.4 mm to the inch by definition
const BARS = [
  { lengthMm: 100, words: '100 mm' },
  { lengthMm: 101.6, words: '4 in' },
] as const;
const TICK_MM = 1.6;
const ROW_MM = 6.5;

/** Room that the two bars of one direction take beside each other. */
export const BARS_MM = BARS.length * ROW_MM;

/** 100 mm and 4 in across the page, above one another from the lower left point. */
export const barsAcross = ([left, bottom]: At, { across }: Stretch): Mark[] =>
  BARS.flatMap(({ lengthMm, words }, i) =>
    bar(lengthMm * across, `${words} across`, words, 0, (along, off) => [
      left + along,
      bottom + 1.6 + i * ROW_MM + off,
    ]),
  );

/** 100 mm and 4 in up the page, beside one another from the lower right point. */
export const barsUp = ([right, bottom]: At, { up }: Stretch): Mark[] =>
  BARS.flatMap(({ lengthMm, words }, i) =>
    bar(lengthMm * up, `${words} up`, words, 90, (along, off) => [
      right - 1.6 - i * ROW_MM - off,
      bottom + along,
    ]),
  );

function bar(
  lengthMm: number,
  name: string,
  words: string,
  turnDeg: 0 | 90,
  at: (along: number, off: number) => At,
): Mark[] {
  return [
    lineMark('edge', [at(0, 0), at(lengthMm, 0)], `bar ${name}`),
    ...[0, lengthMm].map((end) => lineMark('edge', [at(end, -TICK_MM), at(end, TICK_MM)])),
    centredText(words, at(lengthMm / 2, 2.1), TYPE_MM.small, { turnDeg }),
  ];
}
