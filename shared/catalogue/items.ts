import type { CareFlag, ItemShape } from '../../src/core/rows/contents';

/** A thing often given, at its usual size. `measure: true` where sizes vary so much that the maker should measure their own. */
export interface CatalogueItem {
  readonly id: string;
  readonly name: string;
  readonly size: ItemShape;
  readonly gramsEach: number | null;
  readonly care: readonly CareFlag[];
  readonly measure: boolean;
  readonly source: string;
}

const cuboid = (widthMm: number, depthMm: number, heightMm: number): ItemShape => ({
  shape: 'cuboid',
  widthMm,
  depthMm,
  heightMm,
});
const packet = (widthMm: number, depthMm: number, heightMm: number): ItemShape => ({
  shape: 'packet',
  widthMm,
  depthMm,
  heightMm,
});
const standing = (diameterMm: number, heightMm: number): ItemShape => ({
  shape: 'cylinder',
  diameterMm,
  heightMm,
  lies: 'standing',
});
const either = (diameterMm: number, heightMm: number): ItemShape => ({
  shape: 'cylinder',
  diameterMm,
  heightMm,
  lies: 'either',
});
const sphere = (diameterMm: number): ItemShape => ({ shape: 'sphere', diameterMm });

const ISO_7810 = 'ISO/IEC 7810 (through an encyclopedia article), greatest thickness';
const IEC_60086 = "IEC 60086 maxima, Linden's Handbook of Batteries, table 4.9a";
const MINT = 'coin table of a national mint';
const PRACTICE = 'common practice, no source';
const MEMORY = 'from memory, no source: measure yours';

/** Sorted by kind, then size. Round sizes on 0.1 mm. */
export const ITEMS: readonly CatalogueItem[] = [
  row('gift-card', 'Gift card', packet(85.7, 54, 0.9), 5, [], false, ISO_7810),
  row('id-2-card', 'Card, ID-2', packet(105, 74, 0.9), null, [], false, ISO_7810),
  row('passport', 'Passport', packet(125, 88, 4), null, [], true, `${ISO_7810}; thickness ${MEMORY}`),
  row('playing-card-deck', 'Deck of playing cards, boxed', cuboid(65, 19, 92), 95, [], true, MEMORY),
  row('playing-card', 'Playing card, wide', packet(63.5, 88.9, 0.3), 2, [], false, PRACTICE),
  row('tea-bag', 'Tea bag in an envelope', packet(62, 75, 4), 3, ['food'], true, MEMORY),
  row('seed-packet', 'Seed packet', packet(80, 115, 4), 10, ['moisture'], true, MEMORY),
  row('cell-aaa', 'AAA battery', either(10.5, 44.5), 12, ['small-parts'], false, IEC_60086),
  row('cell-aa', 'AA battery', either(14.5, 50.5), 24, [], false, IEC_60086),
  row('cell-c', 'C battery', either(26.2, 50), 66, [], false, IEC_60086),
  row('cell-d', 'D battery', either(34.2, 61.5), 140, [], false, IEC_60086),
  row(
    'coin-quarter-roll',
    'Roll of 40 quarter dollars',
    either(24.3, 70),
    227,
    ['small-parts'],
    false,
    `${MINT}; 40 × 1.75 mm`,
  ),
  row('coin-dollar', 'Dollar coin', standing(26.5, 2), 8, ['small-parts'], false, MINT),
  row('truffle', 'Chocolate truffle, 28 mm, in its cup', sphere(28), 15, ['food', 'allergens'], true, MEMORY),
  row('macaron', 'Macaron', either(45, 25), 18, ['food', 'allergens'], true, `${PRACTICE}; height ${MEMORY}`),
  row(
    'sugared-almond',
    'Candied almond',
    cuboid(25, 10, 15),
    4,
    ['food', 'allergens', 'choking-food'],
    true,
    MEMORY,
  ),
  row(
    'sweets-bag',
    'Bag of candy, tied',
    { shape: 'soft', widthMm: 70, depthMm: 40, heightMm: 90 },
    80,
    ['food', 'allergens', 'choking-food'],
    true,
    MEMORY,
  ),
  row('jam-jar', 'Mini jam jar', standing(47, 55), 90, ['food', 'moisture'], true, MEMORY),
  row(
    'drinks-can',
    'Soda can, 12 fl oz',
    standing(68.3, 122.3),
    385,
    ['food', 'moisture'],
    false,
    "can makers' size code: 2 11/16 × 4 13/16 in",
  ),
  row('tealight', 'Tealight', standing(39, 19), 14, ['flame'], true, PRACTICE),
  row('tealight-led', 'Battery tealight', standing(38, 40), 12, ['small-parts', 'button-cell'], true, MEMORY),
  row('votive', 'Votive candle', standing(48, 51), 55, ['flame'], true, `${PRACTICE}: tops run 45 to 50 mm`),
  row('soap-bar', 'Soap bar', cuboid(85, 25, 55), 100, ['moisture'], true, MEMORY),
  row('lip-balm', 'Lip balm', either(16, 68), 12, ['small-parts'], true, MEMORY),
  row('table-tennis-ball', 'Table tennis ball', sphere(40), 3, [], false, 'sport rules, from memory'),
  row('golf-ball', 'Golf ball', sphere(42.7), 46, [], false, 'sport rules (at least 42.67 mm), from memory'),
  row(
    'seedling-pot',
    'Seedling in a 5.5 cm pot',
    { shape: 'pot', diameterMm: 55, heightMm: 50 },
    150,
    ['moisture'],
    true,
    PRACTICE,
  ),
];

function row(
  id: string,
  name: string,
  size: ItemShape,
  gramsEach: number | null,
  care: readonly CareFlag[],
  measure: boolean,
  source: string,
): CatalogueItem {
  return { id, name, size, gramsEach, care, measure, source };
}
