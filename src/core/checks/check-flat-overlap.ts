import type { PieceNet } from '../net/types';
import { asTicks, flatRing, wordsOf } from './closed-piece';
import type { Finding } from './finding';
import { type At, convexParts, counterClockwise, overlapDepth } from './planar';

/** Rounded points of slanted lines may stand a tick or two over one another. source: our choice, a hundredth of a millimetre */
const ROUNDING_MM = 0.01;

/** Panels that would have to be cut from the same card: in the flat they may touch, never overlap. */
export function checkFlatOverlap(piece: PieceNet): Finding[] {
  const rings = piece.faces.map((_, face) => convexParts(counterClockwise(flatRing(piece, face))));
  const boxes = piece.faces.map(({ ring }) => boundsOf(ring));
  const findings: Finding[] = [];
  for (let p = 0; p < rings.length; p++)
    for (let q = p + 1; q < rings.length; q++) {
      const [one, other] = [boxes[p], boxes[q]];
      if (one === undefined || other === undefined || apart(one, other)) continue;
      const deep = deepest(rings[p] ?? [], rings[q] ?? []);
      if (deep <= ROUNDING_MM) continue;
      findings.push({
        code: 'panels-overlap-flat',
        severity: 'stop',
        where: piece.faces[q]?.panel ?? '',
        facts: { one: wordsOf(piece, p), other: wordsOf(piece, q), deep: asTicks(deep) },
        says: 'The {one} and the {other} lie over one another by {deep} on the blank.',
        remedy: 'Make one of them smaller: they cannot both be cut from the same card.',
      });
    }
  return findings;
}

const deepest = (parts: readonly (readonly At[])[], others: readonly (readonly At[])[]): number =>
  Math.max(...parts.flatMap((part) => others.map((other) => overlapDepth(part, other))));

type Bounds = readonly [left: number, right: number, low: number, high: number];

function boundsOf(ring: readonly { readonly x: number; readonly y: number }[]): Bounds {
  let [left, right, low, high] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const { x, y } of ring) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return [left, right, low, high];
}

const apart = (p: Bounds, q: Bounds): boolean => p[1] <= q[0] || q[1] <= p[0] || p[3] <= q[2] || q[3] <= p[2];
