import { type Caution, cautionsAbout, type Hazard } from '../../../shared/catalogue/cautions';
import type { Contents } from '../../../shared/contents';

/**
 * The usual words of care for what is given: for the page, the card, the handout. A hot thing given calls for cooling, a weight for a trial
 * box; empty contents call for none.
 */
export function cautionsOf(contents: Contents): readonly Caution[] {
  const { items } = contents;
  if (items.length === 0) return [];
  const hazards = new Set<Hazard>(items.flatMap(({ care }) => care));
  hazards.add('load');
  if (items.some(({ name }) => /honey/i.test(name))) hazards.add('honey');
  return cautionsAbout([...hazards]);
}
