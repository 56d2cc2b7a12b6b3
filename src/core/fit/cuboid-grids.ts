import { paretoBy } from './pareto';
import type { Arrangement, Placed, Vec } from './types';

/** The ways a cuboid can stand, equal sizes once; `upright` keeps its height up. */
export function standings([w, d, h]: Vec, upright: boolean): Vec[] {
  const all: Vec[] = upright
    ? [
        [w, d, h],
        [d, w, h],
      ]
    : [
        [w, d, h],
        [d, w, h],
        [w, h, d],
        [h, w, d],
        [d, h, w],
        [h, d, w],
      ];
  return all.filter((a, i) => all.findIndex((b) => a.every((side, k) => side === b[k])) === i);
}

/**
 * Every grid of `count` equal cuboids that no other grid beats in width, depth and height together. Sizes in mm.
 * Exact among grids: all a × b × ceil(count / ab) of all standings are tried.
 */
export function gridCuboids(item: string, size: Vec, count: number, upright: boolean): Arrangement[] {
  const grids = standings(size, upright).flatMap((stood) =>
    Array.from({ length: count }, (_, i) => i + 1).flatMap((across) =>
      Array.from({ length: Math.ceil(count / across) }, (_, i) => i + 1).flatMap((deep) => {
        const high = Math.ceil(count / (across * deep));
        // A grid that holds them with one row or column fewer, and no more layers, is no larger.
        const spare = high * deep * (across - 1) >= count || high * across * (deep - 1) >= count;
        return spare ? [] : [{ stood, across, deep, high }];
      }),
    ),
  );
  const filled = ({ stood, across, deep, high }: (typeof grids)[number]): Vec => [
    stood[0] * across,
    stood[1] * deep,
    stood[2] * high,
  ];
  return paretoBy(grids, filled).map((grid) => ({
    pattern: `${grid.across} × ${grid.deep} × ${grid.high}`,
    exact: true,
    size: filled(grid),
    placed: Array.from({ length: count }, (_, n): Placed => {
      const column = n % grid.across;
      const row = Math.floor(n / grid.across) % grid.deep;
      const layer = Math.floor(n / (grid.across * grid.deep));
      const at: Vec = [column * grid.stood[0], row * grid.stood[1], layer * grid.stood[2]];
      return { item, shape: 'cuboid', at, size: grid.stood, turnDeg: 0 };
    }),
  }));
}
