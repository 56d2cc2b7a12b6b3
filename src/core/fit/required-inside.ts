import type { Contents, Item } from '../rows/contents';
import { inches, millimetres, TICKS_PER_MM, type Ticks, ticks } from '../units';
import type { Arrangement } from './types';

/** Air on each axis, in all, for the tenderest thing inside. source: common practice, no source. */
const CLEARANCE = {
  rigid: inches(0, 1, 16),
  soft: inches(0, 1, 8),
  baggedFood: inches(0, 1, 4),
} as const;

export type ClearanceKind = keyof typeof CLEARANCE;

/** Which clearance a thing asks for: a soft thing that is food is a bag of food; other soft or wrapped things give a little. */
export function clearanceKindOf(item: Item): ClearanceKind {
  const soft = item.size.shape === 'soft';
  if (soft && item.care.includes('food')) return 'baggedFood';
  return soft || item.wrapMm > 0 ? 'soft' : 'rigid';
}

/** The clearance of the contents as a whole: the maker's own, or the largest any thing asks for. */
export function clearanceOf({ items, clearanceMm }: Contents): {
  readonly length: Ticks;
  readonly kind: ClearanceKind | 'own';
} {
  if (clearanceMm !== null) return { length: millimetres(clearanceMm), kind: 'own' };
  const kinds = items.map(clearanceKindOf);
  const kind = (['baggedFood', 'soft', 'rigid'] as const).find((one) => kinds.includes(one)) ?? 'rigid';
  return { length: CLEARANCE[kind], kind };
}

/** Inside width, depth and height an arrangement needs, each rounded up to the tick once: what lies there, and its air. */
export function requiredInside({ size }: Arrangement, clearance: Ticks): [Ticks, Ticks, Ticks] {
  const up = (mm: number) => ticks(Math.ceil(mm * TICKS_PER_MM - 1e-6) + clearance);
  return [up(size[0]), up(size[1]), up(size[2])];
}

/** Weight of everything inside in grams; null when something has not been weighed. */
export function gramsOf({ items }: Contents): number | null {
  if (items.some(({ gramsEach }) => gramsEach === null)) return null;
  return items.reduce((sum, { gramsEach, count }) => sum + (gramsEach ?? 0) * count, 0);
}
