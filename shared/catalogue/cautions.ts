/** What in the work calls for the caution. */
export type Hazard =
  | 'blade'
  | 'stack'
  | 'hot-glue'
  | 'heat-tool'
  | 'candle'
  | 'light'
  | 'small-part'
  | 'food'
  | 'allergen'
  | 'honey'
  | 'moisture'
  | 'load'
  | 'solvent';

export interface Caution {
  readonly id: string;
  readonly hazard: Hazard;
  readonly says: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

// biome-ignore format: a table
export const CAUTIONS: readonly Caution[] = [
  { id: 'blade', hazard: 'blade', says: 'Cut away from your fingers along a metal-edged ruler, close the guard after every cut, and change a dull blade.', source: PRACTICE },
  { id: 'narrow-strip', hazard: 'blade', says: 'A strip under 1/2 in (12 mm) brings fingers close to the trimmer’s blade: cut it with a knife and ruler.', source: PRACTICE },
  { id: 'stack', hazard: 'stack', says: 'Cut no more sheets at once than the trimmer is made for.', source: PRACTICE },
  { id: 'hot-glue', hazard: 'hot-glue', says: 'Hot melt burns at a touch. Cool a burn under running water for 10 to 15 minutes, use no ice, do not pull off stuck glue, and seek advice if it stays.', source: PRACTICE },
  { id: 'heat-tool', hazard: 'heat-tool', says: 'Keep a heat tool off the card stock, air the room, and let it cool on its stand.', source: PRACTICE },
  { id: 'candle', hazard: 'candle', says: 'Never burn a candle in or on a card box. A candle given as a favor carries its own warning: burn within sight, away from things that catch fire, children and pets.', source: 'ASTM F2058 (wording of the warning, from a secondary text); first sentence common practice' },
  { id: 'button-cell', hazard: 'light', says: 'Button cells in small lights are dangerous when swallowed: give only lights whose battery door is screwed shut, and not to small children.', source: 'from memory; 16 CFR 1263 covers button cells' },
  { id: 'small-part', hazard: 'small-part', says: 'Small contents can choke a child under three: keep such favors from them and say so on the tag.', source: '16 CFR 1501' },
  { id: 'food-contact', hazard: 'food', says: 'Craft card is not sold for food contact: wrap food first, and keep glue and ink outside the wrap.', source: 'common practice, no source; 21 CFR 176.170 and 176.180 approve by substance and use' },
  { id: 'allergen', hazard: 'allergen', says: 'Name the allergens on the tag: milk, eggs, fish, shellfish, tree nuts, peanuts, wheat, soybeans, sesame; elsewhere the list is longer.', source: 'United States FALCPA and FASTER acts, from a secondary text; EU list from memory' },
  { id: 'honey', hazard: 'honey', says: 'Honey is not for infants under twelve months.', source: 'from memory' },
  { id: 'moisture', hazard: 'moisture', says: 'Damp air and cold storage soften card: fill late and keep filled boxes dry.', source: 'Journal of Applied Packaging Research 9(2) art. 3: stiffness falls 20 to 53 % at 90 % humidity' },
  { id: 'load', hazard: 'load', says: 'No strength is promised: fill one box, carry it as your guests will, and look at the bottom before making the rest.', source: PRACTICE },
  { id: 'solvent', hazard: 'solvent', says: 'Use spray and solvent glue only in moving air, away from flames.', source: PRACTICE },
];

export const cautionsAbout = (...hazards: readonly Hazard[]): readonly Caution[] =>
  CAUTIONS.filter(({ hazard }) => hazards.includes(hazard));
