import type { Arrangement, Placed } from './types';

/** Nearer than this two things stand in one row. source: our choice, mm */
const SAME_MM = 1;

const middleOf = (thing: Placed, axis: 0 | 1): number =>
  thing.shape === 'cuboid' ? thing.at[axis] + thing.size[axis] / 2 : thing.at[axis];

const apart = (all: readonly number[]): number =>
  [...all].sort((p, q) => p - q).filter((at, i, sorted) => i === 0 || at - (sorted[i - 1] ?? 0) > SAME_MM)
    .length;

/** How many columns and rows of cells an arrangement stands in, seen from above; null where it is no grid, or has but one row or column. */
export function cellsOf({ placed }: Arrangement): { readonly columns: number; readonly rows: number } | null {
  const [columns, rows] = ([0, 1] as const).map((axis) =>
    apart(placed.map((thing) => middleOf(thing, axis))),
  ) as [number, number];
  const spots = new Set(
    placed.map((thing) => `${Math.round(middleOf(thing, 0))}/${Math.round(middleOf(thing, 1))}`),
  );
  const isGrid = columns * rows === spots.size;
  return isGrid && columns > 1 && rows > 1 && columns <= 12 && rows <= 12 ? { columns, rows } : null;
}
