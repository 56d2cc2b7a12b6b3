import type { Arrangement, Placed, Vec } from './types';

/**
 * Faults of an arrangement: two things that overlap, or one that leaves its cuboid (its top may, by `aboveMm`). Millimeters.
 * Shares nothing with the packers: every solid is measured from its placing alone. Empty when sound.
 */
export function checkArrangement({ size, placed }: Arrangement, aboveMm = 0): string[] {
  const faults: string[] = [];
  placed.forEach((one, i) => {
    const [low, high] = boundsOf(one);
    if (low.some((c) => c < -SLACK)) faults.push(`${one.item} ${i} leaves the box`);
    if (high.some((c, k) => c > (size[k] ?? 0) + (k === 2 ? aboveMm : 0) + SLACK))
      faults.push(`${one.item} ${i} leaves the box`);
    placed.slice(0, i).forEach((other, j) => {
      if (overlap(one, other)) faults.push(`${one.item} ${i} runs into ${other.item} ${j}`);
    });
  });
  return faults;
}

const SLACK = 1e-6; // mm; far below a tick, far above the rounding of floats

const AXIS = { x: 0, y: 1, z: 2 } as const;

function boundsOf(one: Placed): [Vec, Vec] {
  if (one.shape === 'cuboid') {
    const corners = cornersOf(one);
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    return [
      [Math.min(...xs), Math.min(...ys), one.at[2]],
      [Math.max(...xs), Math.max(...ys), one.at[2] + one.size[2]],
    ];
  }
  const r = one.diameter / 2;
  const half: [number, number, number] = [r, r, r];
  if (one.shape === 'cylinder') half[AXIS[one.lies]] = one.height / 2;
  return [plus(one.at, half, -1), plus(one.at, half, 1)];
}

const plus = (a: Vec, b: Vec, times: number): Vec => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
];

type Corner = readonly [x: number, y: number];

/** The four corners of a cuboid seen from above, turned about its own middle. */
function cornersOf({ at, size, turnDeg }: Extract<Placed, { shape: 'cuboid' }>): Corner[] {
  const [x, y] = [at[0] + size[0] / 2, at[1] + size[1] / 2];
  const turn = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([u = 0, v = 0]): Corner => {
    const [dx, dy] = [(u * size[0]) / 2, (v * size[1]) / 2];
    return [x + dx * cos - dy * sin, y + dx * sin + dy * cos];
  });
}

/** Two rectangles are apart if they are so across one side of either. */
function apartInPlan(a: readonly Corner[], b: readonly Corner[]): boolean {
  return [a, b].some((ring) =>
    ring.some(([x, y], i) => {
      const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
      const [u, v] = [nextY - y, x - nextX];
      const along = (of: readonly Corner[]) => of.map(([cx, cy]) => cx * u + cy * v);
      const length = Math.hypot(u, v) || 1;
      const [mine, theirs] = [along(a), along(b)];
      return (
        Math.max(...mine) <= Math.min(...theirs) + SLACK * length ||
        Math.max(...theirs) <= Math.min(...mine) + SLACK * length
      );
    }),
  );
}

/** Bounding boxes apart is enough for all; two round things whose axes agree are also apart when their circles are. */
function overlap(a: Placed, b: Placed): boolean {
  const [aLow, aHigh] = boundsOf(a);
  const [bLow, bHigh] = boundsOf(b);
  if (
    aLow.some((low, k) => low >= (bHigh[k] ?? 0) - SLACK) ||
    bLow.some((low, k) => low >= (aHigh[k] ?? 0) - SLACK)
  )
    return false;
  if (a.shape === 'cuboid' && b.shape === 'cuboid') return !apartInPlan(cornersOf(a), cornersOf(b));
  if (a.shape === 'cuboid' || b.shape === 'cuboid') return true;
  const apart = Math.hypot(...acrossAxes(a, b)) - (a.diameter + b.diameter) / 2;
  return apart < -SLACK;
}

/** The vector between two centres, less the component along a shared cylinder axis (where they are already known to overlap). */
function acrossAxes(a: Placed, b: Placed): number[] {
  const along = a.shape === 'cylinder' && b.shape === 'cylinder' && a.lies === b.lies ? AXIS[a.lies] : null;
  return a.at.map((c, k) => (k === along ? 0 : c - (b.at[k] ?? 0)));
}
