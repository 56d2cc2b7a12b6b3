import type { SheetPaper, SheetPart } from '../types';

/** Parts that may stand for one another: equal sizes, equal freedom, equal points. */
export interface PartGroup {
  readonly ids: readonly string[];
  /** Wanted of all of them together. */
  readonly count: number;
  readonly points: number;
  readonly lies: readonly { readonly across: number; readonly up: number }[];
}

/** Groups of the parts, from the parts and the paper alone; sizes with one kerf added. */
export function groupParts(
  parts: readonly SheetPart[],
  paper: SheetPaper,
  kerf: number,
  points: Readonly<Record<string, number>>,
): PartGroup[] {
  const groups = new Map<string, PartGroup>();
  for (const part of parts) {
    if (part.count <= 0) continue;
    const [a, b] = [part.across + kerf, part.up + kerf];
    const free = part.grain === 'free' || paper.grain === 'none';
    const straight = free || part.grain === paper.grain;
    const lies = [...(straight ? [[a, b]] : []), ...(free || !straight ? [[b, a]] : [])];
    const key = `${lies.map(String).sort().join(' ')} for ${points[part.id] ?? 0}`;
    const known = groups.get(key);
    groups.set(key, {
      ids: [...(known?.ids ?? []), part.id],
      count: (known?.count ?? 0) + part.count,
      points: points[part.id] ?? 0,
      lies: lies.map(([across = 0, up = 0]) => ({ across, up })),
    });
  }
  return [...groups.values()];
}
