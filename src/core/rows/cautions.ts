import type { CareFlag, Contents, Item } from './contents';

/** What calls for the caution: something given, or something about the work on a whole batch. */
export type Hazard = CareFlag | 'small-ball' | 'stack' | 'narrow-strip' | 'load';

export interface Caution {
  readonly hazard: Hazard;
  readonly says: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

// biome-ignore format: a table
/** The usual words of care about what is given and about a batch; blade and hot glue are said at the step where they are used. */
const CAUTIONS: readonly Caution[] = [
  { hazard: 'stack', says: 'Cut no more sheets at once than the trimmer is made for.', source: PRACTICE },
  { hazard: 'narrow-strip', says: 'A strip under 1/2 in (12 mm) brings fingers close to the trimmer blade. Cut it with a knife and ruler.', source: PRACTICE },
  { hazard: 'load', says: 'Test the bottom. Fill one box, carry it as your guests will, and look at the bottom before you make the rest.', source: PRACTICE },
  { hazard: 'hot', says: 'Let baked or melted items cool all the way before you box them.', source: PRACTICE },
  { hazard: 'flame', says: 'Never burn a candle in or on a cardstock box. Give each candle its own warning: burn within sight, away from children, pets and anything that can catch fire.', source: 'ASTM F2058 (wording of the warning, from a secondary text); first sentence common practice' },
  { hazard: 'button-cell', says: 'Button cells are dangerous when swallowed. Give only lights with a screwed-shut battery door, and not to small children.', source: '16 CFR 1263 covers button cells; wording from memory' },
  { hazard: 'small-parts', says: 'Small items can choke a child under three. Keep these favors away from them, and say so on the tag.', source: '16 CFR 1501' },
  { hazard: 'small-ball', says: 'A ball under 1 3/4 in (44.4 mm) can block a child’s throat. Keep these favors away from children under three, and write “small ball” on the tag.', source: '16 CFR 1500.19(a)(2)' },
  { hazard: 'choking-food', says: 'Hard or round candy, nuts and popcorn can choke a child under four. Keep these favors away from them, and say so on the tag.', source: 'advice of the American Academy of Pediatrics, from secondary texts' },
  { hazard: 'food', says: 'Craft cardstock isn’t sold for food contact. Wrap food first, and keep glue and ink outside the wrap.', source: '21 CFR 176.170 and 176.180 approve by substance and use; wording common practice' },
  { hazard: 'allergens', says: 'Name allergens on the tag: milk, eggs, fish, shellfish, tree nuts, peanuts, wheat, soybeans, sesame. Some countries list more.', source: 'United States FALCPA and FASTER acts, from a secondary text; EU list from memory' },
  { hazard: 'honey', says: 'Honey is not for infants under twelve months.', source: 'from memory' },
  { hazard: 'moisture', says: 'Damp air and cold storage soften cardstock. Fill late, and keep filled boxes dry.', source: 'Journal of Applied Packaging Research 9(2) art. 3: stiffness falls 20 to 53 % at 90 % humidity' },
];

/** Diameter below which a ball counts as a small ball, in millimeters. source: 16 CFR 1500.19(a)(2), 1.75 in (44.4 mm) */
const SMALL_BALL_MM = 44.4;

/** What a name gives away where no one has ticked it. */
const NAMED: readonly (readonly [Hazard, RegExp])[] = [
  ['honey', /honey/i],
  ['button-cell', /\b(battery|batteries|LED|LEDs)\b|(button|coin) cell|fairy light/i],
  [
    'choking-food',
    /\b(nuts?|almonds?|peanuts?|cashews?|hazelnuts?|pecans?|pistachios?|walnuts?|popcorn|marshmallows?|lollipops?|gumballs?|jelly ?beans?|mints?)\b|(hard|boiled) (sweet|cand)/i,
  ],
];

export const hazardsNamed = (name: string): readonly Hazard[] =>
  NAMED.flatMap(([hazard, pattern]) => (pattern.test(name) ? [hazard] : []));

/** A round sweet is food and no toy, so it is warned of as food. */
const ballHazard = ({ size, care }: Item): readonly Hazard[] =>
  size.shape === 'sphere' && size.diameterMm < SMALL_BALL_MM
    ? [care.includes('food') ? 'choking-food' : 'small-ball']
    : [];

const hazardsOf = (item: Item): readonly Hazard[] => [
  ...item.care,
  ...hazardsNamed(item.name),
  ...ballHazard(item),
];

/** The usual words of care for what goes inside: for page, desk, card and handout alike. Every weight calls for a trial box; empty contents call for nothing. */
export const hazardsInside = ({ items }: Contents): readonly Hazard[] =>
  items.length === 0 ? [] : [...items.flatMap(hazardsOf), 'load'];

export const cautionsOf = (contents: Contents): readonly Caution[] => cautionsAbout(hazardsInside(contents));

export const cautionsAbout = (hazards: readonly Hazard[]): readonly Caution[] =>
  CAUTIONS.filter(({ hazard }) => hazards.includes(hazard));
