import type { Arrangement, Placed, Vec } from './types';

/**
 * Faults of an arrangement: two things that overlap, or one that leaves its cuboid (its top may, by `aboveMm`). Millimetres.
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
  if (one.shape === 'cuboid') return [one.at, plus(one.at, one.size, 1)];
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

/** Bounding boxes apart is enough for all; two round things whose axes agree are also apart when their circles are. */
function overlap(a: Placed, b: Placed): boolean {
  const [aLow, aHigh] = boundsOf(a);
  const [bLow, bHigh] = boundsOf(b);
  if (
    aLow.some((low, k) => low >= (bHigh[k] ?? 0) - SLACK) ||
    bLow.some((low, k) => low >= (aHigh[k] ?? 0) - SLACK)
  )
    return false;
  if (a.shape === 'cuboid' || b.shape === 'cuboid') return true;
  const apart = Math.hypot(...acrossAxes(a, b)) - (a.diameter + b.diameter) / 2;
  return apart < -SLACK;
}

/** The vector between two centres, less the component along a shared cylinder axis (where they are already known to overlap). */
function acrossAxes(a: Placed, b: Placed): number[] {
  const along = a.shape === 'cylinder' && b.shape === 'cylinder' && a.lies === b.lies ? AXIS[a.lies] : null;
  return a.at.map((c, k) => (k === along ? 0 : c - (b.at[k] ?? 0)));
}
