import { type At, readLengths, type Unit, Unreadable } from './lengths';

/** A run of places as it is, and wherever it comes again on a card that lies so wide and high. */
export function repeated(
  points: readonly At[],
  same: string | undefined,
  [wide, high]: At,
  unit: Unit,
): (readonly At[])[] {
  if (same === undefined) return [points];
  const mirrors: Record<string, (at: At) => At> = {
    'mirrored left to right': ([x, y]) => [wide - x, y],
    'mirrored near to far': ([x, y]) => [x, high - y],
    'turned half round': ([x, y]) => [wide - x, high - y],
  };
  if (same === 'at all four corners')
    return [points, ...Object.values(mirrors).map((over) => points.map(over))];
  const [, by, way] = /^(.+) farther (across|up)$/.exec(same) ?? [];
  if (by !== undefined)
    return [
      points,
      ...readLengths(by, unit).map((far) =>
        points.map(([x, y]): At => (way === 'up' ? [x, y + far] : [x + far, y])),
      ),
    ];
  return [
    points,
    ...same.split(' and ').map((one) => {
      const over = mirrors[one];
      if (!over) throw new Unreadable(same);
      return points.map(over);
    }),
  ];
}
