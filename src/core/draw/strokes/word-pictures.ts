import { type At, type Box, boxRing } from '../../plane';
import { areaMark, centredText, lineMark } from './marks';
import type { Ink, Mark } from './types';

/** Size of a word's picture, mm on paper. source: our own, two side by side on a phone. */
export const WORD_PICTURE_MM = { width: 56, height: 32 } as const;

const box = (left: number, bottom: number, right: number, top: number): Box => ({ left, bottom, right, top });
const card = (...of: [number, number, number, number]): Mark[] => [
  areaMark('paper', boxRing(box(...of))),
  areaMark('edge', boxRing(box(...of))),
];
const patch = (ink: Ink, ...of: [number, number, number, number]): Mark => areaMark(ink, boxRing(box(...of)));
const stroke = (ink: Ink, ...points: At[]): Mark => lineMark(ink, points);

/** An upright line of an ink, and a slit with its bars. */
const upright = (ink: Ink, x: number, bottom: number, top: number): Mark =>
  stroke(ink, [x, bottom], [x, top]);
const slit = (x: number, bottom: number, top: number): Mark[] => [
  upright('slit', x, bottom, top),
  ...[bottom, top].map((y) => stroke('slit', [x - 1.1, y], [x + 1.1, y])),
];

const TICK = 0.9;
/** A measure from here to there, level or upright, with slanted ticks. */
const measure = ([x, y]: At, [x2, y2]: At): Mark[] => [
  stroke('dimension', [x, y], [x2, y2]),
  ...[[x, y] as const, [x2, y2] as const].map(([a, b]) =>
    stroke('dimension', [a - TICK, b - TICK], [a + TICK, b + TICK]),
  ),
];

const BARB = 1.8;
const arrowHead = (ink: Ink, [x, y]: At, way: 1 | -1): Mark =>
  stroke(ink, [x - way * BARB, y + BARB / 2], [x, y], [x - way * BARB, y - BARB / 2]);

/** The marks of a ruler along the bottom: long for whole ones, shorter for halves. */
const ruler = (): Mark[] => [
  stroke('edge', [4, 8], [52, 8]),
  ...Array.from({ length: 13 }, (_, n) =>
    upright('edge', 4 + 4 * n, 8, n % 4 === 0 ? 15 : n % 2 === 0 ? 12 : 10),
  ),
];

/** Four walls in a row with their scores. */
const walls = (bottom: number, top: number): Mark[] => [
  ...card(4, bottom, 52, top),
  ...[18, 26, 40].map((x) => upright('score-valley', x, bottom, top)),
];

const ROW = 13;
/** Two rows of equal parts from the left, the upper one at `bottom`; each row `ROW` below the other. */
const parts = (
  inRow: number,
  left: number,
  step: number,
  bottom: number,
  [wide, high]: readonly [number, number],
): Mark[] =>
  Array.from({ length: 2 * inRow }, (_, n) => {
    const [x, y] = [left + step * (n % inRow), bottom - ROW * Math.floor(n / inRow)];
    return patch('part', x, y, x + wide, y + high);
  });

/** What each word of the trade looks like, in the inks of every other drawing. Frame: y up, from the lower left corner. */
const PICTURES = {
  blank: () => [
    ...card(8, 4, 48, 28),
    patch('waste', 40, 4, 48, 12),
    patch('waste', 8, 4, 16, 12),
    stroke('cut', [8, 12], [16, 12], [16, 4]),
    stroke('cut', [40, 4], [40, 12], [48, 12]),
  ],
  caliper: () => [
    ...Array.from({ length: 10 }, (_, n) => card(14, 5 + 2 * n, 48, 7 + 2 * n)).flat(),
    ...measure([8, 5], [8, 25]),
  ],
  clearance: () => [
    stroke('cut', [10, 28], [10, 4], [46, 4], [46, 28]),
    patch('part', 16, 4, 40, 22),
    ...measure([10, 26], [16, 26]),
    ...measure([40, 26], [46, 26]),
  ],
  dressing: () => [...card(18, 4, 38, 28), patch('part', 18, 11, 38, 18), ...card(25, 8, 31, 21)],
  'easy-mark': () => [...ruler(), upright('score-valley', 36, 8, 28)],
  fence: () => [
    patch('part', 4, 2, 9, 30),
    ...card(9, 6, 46, 26),
    upright('score-valley', 30, 6, 26),
    ...measure([9, 29], [30, 29]),
    stroke('move', [54, 16], [48, 16]),
    arrowHead('move', [48, 16], -1),
  ],
  flap: () => [
    ...card(14, 4, 42, 28),
    stroke('score-valley', [14, 14], [42, 14]),
    centredText('flap', [28, 9], 4),
  ],
  'glue-tab': () => [
    ...card(6, 6, 50, 26),
    upright('score-valley', 28, 6, 26),
    upright('score-valley', 41, 6, 26),
    patch('glue', 41, 6, 50, 26),
    patch('paper', 43.4, 13, 47.6, 19),
    centredText('G', [45.5, 16], 4, { bold: true }),
  ],
  grain: () => [
    ...card(8, 4, 48, 28),
    ...[8, 12, 20, 24].map((y) => stroke('guide', [11, y], [45, y])),
    stroke('grain', [14, 16], [42, 16]),
    arrowHead('grain', [42, 16], 1),
    arrowHead('grain', [14, 16], -1),
  ],
  'inside-outside': () => [
    stroke('cut', [10, 22], [10, 4], [46, 4], [46, 22]),
    stroke('cut', [13, 22], [13, 7], [43, 7], [43, 22]),
    ...measure([13, 14], [43, 14]),
    ...measure([10, 27], [46, 27]),
  ],
  kerf: () => [
    ...card(8, 4, 48, 28),
    patch('waste', 26, 4, 30, 28),
    upright('cut', 26, 4, 28),
    upright('cut', 30, 4, 28),
  ],
  lap: () => [...card(6, 6, 32, 26), ...card(22, 9, 50, 23), patch('glue-below', 22, 9, 32, 23)],
  liner: () => [
    ...card(16, 4, 40, 29),
    patch('part', 18, 6, 38, 24),
    stroke('score-valley', [16, 10], [40, 10]),
  ],
  net: () => [
    ...walls(13, 28),
    ...card(4, 4, 46, 13),
    upright('score-valley', 46, 13, 28),
    stroke('score-valley', [4, 13], [46, 13]),
    ...[18, 26, 40].flatMap((x) => slit(x, 4, 13)),
  ],
  offcut: () => [...card(6, 4, 50, 28), patch('part', 6, 4, 32, 28), patch('offcut', 34, 6, 48, 26)],
  panel: () => [...walls(6, 26), patch('part', 26, 6, 40, 26)],
  'scant-full': () => [
    ...ruler(),
    upright('guide', 35, 15, 28),
    upright('cut', 36, 8, 22),
    upright('guide', 37, 15, 28),
    stroke('move', [26, 25], [33.6, 25]),
    arrowHead('move', [33.6, 25], 1),
    stroke('move', [46, 25], [38.4, 25]),
    arrowHead('move', [38.4, 25], -1),
  ],
  score: () => [
    ...card(8, 5, 48, 27),
    upright('score-valley', 22, 5, 27),
    upright('score-mountain', 34, 5, 27),
  ],
  'score-to-score': () => [
    ...card(6, 4, 50, 22),
    upright('score-valley', 16, 4, 22),
    upright('score-valley', 38, 4, 22),
    ...measure([16, 26], [38, 26]),
  ],
  sheet: () => [...card(12, 4, 50, 24), ...measure([12, 28], [50, 28]), ...measure([7, 4], [7, 24])],
  slit: () => [...card(8, 4, 48, 28), stroke('score-valley', [8, 15], [48, 15]), ...slit(28, 4, 15)],
  spares: () => [...parts(4, 4, 10, 18, [8, 10]), patch('offcut', 44, 18, 52, 28)],
  squaring: () => [...card(6, 4, 50, 28), patch('waste', 6, 4, 10, 28), upright('cut', 10, 4, 28)],
  yield: () => [...card(4, 3, 52, 29), ...parts(3, 4, 15, 16, [15, 13]), patch('waste', 49, 3, 52, 29)],
} as const satisfies Readonly<Record<string, () => readonly Mark[]>>;

/** Words of the trade that have a picture. */
export type PicturedWord = keyof typeof PICTURES;
export const PICTURED_WORDS = Object.keys(PICTURES) as PicturedWord[];

/** A word's picture: lines and areas in their inks, within `WORD_PICTURE_MM`. */
export const pictureOfWord = (word: PicturedWord): readonly Mark[] => PICTURES[word]();
