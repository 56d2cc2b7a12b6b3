import type { CareFlag } from '../contents';

/** What calls for the caution: something given, or something about the work on a whole batch. */
export type Hazard = CareFlag | 'honey' | 'light' | 'stack' | 'narrow-strip' | 'load';

export interface Caution {
  readonly hazard: Hazard;
  readonly says: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

// biome-ignore format: a table
/** The usual words of care about what is given and about a batch; blade and hot glue are said at the step where they are used. */
export const CAUTIONS: readonly Caution[] = [
  { hazard: 'stack', says: 'Cut no more sheets at once than the trimmer is made for.', source: PRACTICE },
  { hazard: 'narrow-strip', says: 'A strip under 1/2 in (12 mm) brings fingers close to the trimmer’s blade: cut it with a knife and ruler.', source: PRACTICE },
  { hazard: 'load', says: 'No strength is promised: fill one box, carry it as your guests will, and look at the bottom before making the rest.', source: PRACTICE },
  { hazard: 'hot', says: 'Let baked or melted things cool through before they go into a box.', source: PRACTICE },
  { hazard: 'flame', says: 'Never burn a candle in or on a card box. A candle given carries its own warning: burn within sight, away from things that catch fire, children and pets.', source: 'ASTM F2058 (wording of the warning, from a secondary text); first sentence common practice' },
  { hazard: 'light', says: 'Button cells in small lights are dangerous when swallowed: give only lights whose battery door is screwed shut, and not to small children.', source: 'from memory; 16 CFR 1263 covers button cells' },
  { hazard: 'small-parts', says: 'Small contents can choke a child under three: keep such favors from them and say so on the tag.', source: '16 CFR 1501' },
  { hazard: 'food', says: 'Craft card is not sold for food contact: wrap food first, and keep glue and ink outside the wrap.', source: 'common practice, no source; 21 CFR 176.170 and 176.180 approve by substance and use' },
  { hazard: 'allergens', says: 'Name allergens on the tag: milk, eggs, fish, shellfish, tree nuts, peanuts, wheat, soybeans, sesame; elsewhere the list is longer.', source: 'United States FALCPA and FASTER acts, from a secondary text; EU list from memory' },
  { hazard: 'honey', says: 'Honey is not for infants under twelve months.', source: 'from memory' },
  { hazard: 'moisture', says: 'Damp air and cold storage soften card: fill late and keep filled boxes dry.', source: 'Journal of Applied Packaging Research 9(2) art. 3: stiffness falls 20 to 53 % at 90 % humidity' },
];

export const cautionsAbout = (hazards: readonly Hazard[]): readonly Caution[] =>
  CAUTIONS.filter(({ hazard }) => hazards.includes(hazard));
