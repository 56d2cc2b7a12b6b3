import type { YieldInstance } from '../../shared/yield-instances';

/**
 * Small cutting problems of the literature, typed in: sizes and optimum are facts. Width, height and how many of each; worth is the area.
 * Sizes and optima were checked against the open collections named; where a paper is cited from memory it says so.
 */
const rows = (text: string): { w: number; h: number; demand: number }[] =>
  text.split(' ').map((row) => {
    const [w = 0, h = 0, demand = 0] = row.split('x').map(Number);
    return { w, h, demand };
  });

const OF1 = rows('29x5x1 9x39x4 55x9x1 31x15x1 11x16x2 23x21x3 29x14x4 16x19x3 9x36x2 22x4x2');
const OF2 = rows('22x18x2 40x10x1 13x27x3 23x18x2 29x8x4 16x4x1 47x9x1 19x19x4 13x16x2 36x16x4');
const HH = rows('21x13x5 36x17x4 54x20x2 24x27x1 18x65x6');
const W = rows(
  '11x19x4 12x21x3 14x23x4 17x9x1 18x29x3 21x31x3 23x33x4 24x15x1 24x15x2 25x16x4 27x17x2 32x22x3 34x24x4 35x25x3 36x26x4 37x27x3 38x28x4 39x29x4 41x30x2 43x31x4',
);
const GCUT9 = rows(
  '310x426x1 673x468x1 426x463x1 325x498x1 555x540x1 292x455x1 343x341x1 362x491x1 305x688x1 459x607x1',
);

export interface PublishedCut {
  readonly instance: YieldInstance;
  readonly optimum: number;
  /** Where the sizes come from, and where the optimum. */
  readonly source: string;
}

const worthIt = (
  name: string,
  w: number,
  h: number,
  items: YieldInstance['items'],
  more: Partial<YieldInstance> = {},
): YieldInstance =>
  // biome-ignore format: one row
  ({ name, kind: 'constrained-knapsack', sheet: { w, h }, items, ...more });
const wanted = (name: string, w: number, h: number, items: YieldInstance['items']): YieldInstance => ({
  name,
  kind: 'cutting-stock',
  sheet: { w, h },
  items,
});

const FURINI = 'optimum: F. Furini, E. Malaguti, D. Thomopulos, INFORMS J. Comput. 28 (2016) 736-751';
const BECKER = 'optimum: H. Becker, O. Araujo, L. Buriol, LAGOS 2021';
const OLIVEIRA = 'J. F. Oliveira, J. S. Ferreira, EJOR 44 (1990) 256-266 (volume and pages from memory)';
const HERZ = 'M. Hifi, Comput. Oper. Res. 24 (1997) 727-736, after Herz (from memory)';
const WANG = 'P. Y. Wang, Oper. Res. 31 (1983) 573-586';
const BEASLEY =
  'J. E. Beasley, J. Oper. Res. Soc. 36 (1985) 297-306; optimum: G. F. Cintra et al., EJOR 191 (2008) 61-85';

export const PUBLISHED_CUTS: readonly PublishedCut[] = [
  { instance: worthIt('OF1', 70, 40, OF1), optimum: 2737, source: `${OLIVEIRA}; ${FURINI}` },
  { instance: worthIt('OF2', 70, 40, OF2), optimum: 2690, source: `${OLIVEIRA}; ${FURINI}` },
  { instance: worthIt('HH', 127, 98, HH), optimum: 11_586, source: `${HERZ}; ${FURINI}` },
  { instance: worthIt('W', 70, 40, W), optimum: 2721, source: `${WANG}; ${FURINI}` },
  { instance: worthIt('gcut9', 1000, 1000, GCUT9, { kind: 'unconstrained-knapsack' }), optimum: 971_100, source: BEASLEY }, // biome-ignore format: one row
  { instance: worthIt('gcut9, turned as well', 1000, 1000, GCUT9, { kind: 'unconstrained-knapsack', rotation: true }), optimum: 971_100, source: BEASLEY }, // biome-ignore format: one row
  { instance: wanted('sheets of OF1', 70, 40, OF1), optimum: 4, source: `${OLIVEIRA}; ${BECKER}` },
  { instance: wanted('sheets of OF2', 70, 40, OF2), optimum: 4, source: `${OLIVEIRA}; ${BECKER}` },
  { instance: wanted('sheets of HH', 127, 98, HH), optimum: 2, source: `${HERZ}; ${BECKER}` },
  { instance: wanted('sheets of W', 70, 40, W), optimum: 23, source: `${WANG}; ${BECKER}` },
];
