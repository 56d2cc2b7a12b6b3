import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkClosingPath } from '../../../src/core/checks';
import { anglesDuring, closingStates, foldPiece } from '../../../src/core/fold';
import { layNet, type PieceNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { SEED } from '../../seed';
import { legalBoxes } from '../../styles/legal-sizes';

const STYLE = styleById('petal-top')!;
const LEAVES = [1, 2, 3, 4];

const usual = (): PieceNet => layNet(STYLE, { sizes: {}, caliperUm: 305 }).pieces[0]!;
const partsOf = (piece: PieceNet, leaf: number) =>
  piece.faces.flatMap(({ panel }, face) => (panel === `petal${leaf}` ? [face] : []));
const ringAct = ({ closing }: PieceNet): number =>
  closing.findIndex((act) => act.do === 'fold' && act.panels.includes('petal1'));

type Space = readonly [number, number, number];

/** Do two convex plates in space share a point well inside both? By cutting one with the plane of the other; nothing of `src`. */
function cross(one: readonly Space[], other: readonly Space[], slack: number): boolean {
  const minus = (p: Space, q: Space): Space => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
  const dot = (p: Space, q: Space) => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
  const times = (p: Space, q: Space): Space => [
    p[1] * q[2] - p[2] * q[1],
    p[2] * q[0] - p[0] * q[2],
    p[0] * q[1] - p[1] * q[0],
  ];
  const normal = (ring: readonly Space[]): Space => {
    const sum = ring.reduce<Space>(
      (all, p, at) => {
        const turn = times(minus(p, ring[0]!), minus(ring[(at + 1) % ring.length]!, ring[0]!));
        return [all[0] + turn[0], all[1] + turn[1], all[2] + turn[2]];
      },
      [0, 0, 0],
    );
    const long = Math.hypot(...sum);
    return [sum[0] / long, sum[1] / long, sum[2] / long];
  };
  /** Where a ring meets the other's plane, as a stretch along the line both planes share. */
  const stretch = (
    ring: readonly Space[],
    of: readonly Space[],
    along: Space,
  ): readonly [number, number] | null => {
    const n = normal(of);
    const high = ring.map((p) => dot(n, minus(p, of[0]!)));
    if (Math.max(...high) < slack || Math.min(...high) > -slack) return null;
    const met = ring.flatMap((p, at) => {
      const next = (at + 1) % ring.length;
      const [a, b] = [high[at]!, high[next]!];
      if (a < 0 === b < 0) return [];
      const q = ring[next]!;
      const part = a / (a - b);
      return [
        dot(along, [p[0] + part * (q[0] - p[0]), p[1] + part * (q[1] - p[1]), p[2] + part * (q[2] - p[2])]),
      ];
    });
    return met.length < 2 ? null : [Math.min(...met), Math.max(...met)];
  };
  const line = times(normal(one), normal(other));
  const long = Math.hypot(...line);
  if (long < 1e-4) return false;
  const along: Space = [line[0] / long, line[1] / long, line[2] / long];
  const [p, q] = [stretch(one, other, along), stretch(other, one, along)];
  return p !== null && q !== null && Math.min(p[1], q[1]) - Math.max(p[0], q[0]) > slack;
}

/** Pairs of faces of two leaves that go through one another in any of so many frames of the ring's turn. */
function crossings(piece: PieceNet, frames: number): readonly string[] {
  const states = closingStates(piece);
  const act = ringAct(piece);
  const found = new Set<string>();
  for (let frame = 1; frame < frames; frame++) {
    const rings = foldPiece(piece, anglesDuring(states, act, frame / frames, piece.closing)).map(
      ({ ring }) => ring,
    );
    for (const leaf of LEAVES)
      for (const next of LEAVES.filter((other) => other > leaf))
        for (const one of partsOf(piece, leaf))
          for (const other of partsOf(piece, next))
            if (cross(rings[one]!, rings[other]!, 0.02)) found.add(`${leaf} ${next}`);
  }
  return [...found];
}

/** The same ring with its lower sides left flat. */
const unbent = (piece: PieceNet): PieceNet => ({
  ...piece,
  closing: piece.closing.map((act) => (act.do === 'glue' ? act : { ...act, through: undefined })),
});

describe('a ring of leaves', () => {
  it('turns in with no leaf going through another, degree by degree', () => {
    fc.assert(
      fc.property(legalBoxes(STYLE), (asked) => {
        expect(crossings(layNet(STYLE, asked).pieces[0]!, 90)).toEqual([]);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });

  it('could not, if its lower sides stayed flat: each leaf would go through both neighbors', () => {
    expect(crossings(unbent(usual()), 90)).toEqual(['1 2', '1 4', '2 3', '3 4']);
    const box = layNet(STYLE, { sizes: {}, caliperUm: 305 });
    expect(checkClosingPath(box)).toEqual([]);
    expect(checkClosingPath({ ...box, pieces: box.pieces.map(unbent) }).map(({ code }) => code)).toContain(
      'panels-collide-closing',
    );
  });
});

describe('a closed ring', () => {
  // A leaf that turns out by a small angle rises by that angle times the distance from its score. Where the lower of two leaves is farther
  // from its score it rises faster, so it can’t start before the upper one, and round the ring none can.
  it('locks: somewhere under each leaf the one below is farther from its own score', () => {
    fc.assert(
      fc.property(legalBoxes(STYLE), (asked) => {
        const piece = layNet(STYLE, asked).pieces[0]!;
        const closed = foldPiece(piece);
        const out = (leaf: number, point: readonly number[]): number => {
          const [main = -1] = partsOf(piece, leaf);
          const [end, start, tip] = closed[main]!.ring as [Space, Space, Space];
          const along = [0, 1, 2].map((axis) => end[axis]! - start[axis]!);
          const long = Math.hypot(...along);
          const way = along.map((part) => part / long);
          const foot = (p: readonly number[]) => {
            const seen = [0, 1, 2].map((axis) => p[axis]! - start[axis]!);
            const run = seen.reduce((sum, part, axis) => sum + part * way[axis]!, 0);
            return seen.map((part, axis) => part - run * way[axis]!);
          };
          const up = foot(tip);
          const high = Math.hypot(...up);
          return foot(point).reduce((sum, part, axis) => sum + part * up[axis]!, 0) / high;
        };
        const gains = LEAVES.map((lower) => {
          const upper = (lower % 4) + 1;
          const [, under = -1] = partsOf(piece, lower);
          return Math.max(
            ...closed[under]!.ring.map((p) => out(lower, p) / Math.max(out(upper, p), 1e-6)).filter(
              (gain) => gain < 100,
            ),
          );
        });
        for (const gain of gains) expect(gain).toBeGreaterThan(1.05);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });
});
