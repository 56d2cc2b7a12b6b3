import { samePoint } from '../../net/point';
import type { Blank, PieceNet, Point } from '../../net/types';
import { ticks } from '../../units/ticks';
import { blankRing } from '../equal/bench-card';
import { type Lie, sizeAsItLies, toBench } from '../equal/card-lie';
import { isLargerOnLeft } from '../equal/card-outline';
import type { BenchOp, BenchPoint, HoleKind } from '../types';
import { type CutChain, cutChains } from './outline-cuts';

/** Ends of chords are rounded, so a circle may be so many ticks longer than wide. */
const OFF_ROUND = 2;

type CornerOp = Extract<BenchOp, { op: 'corner' }>;

/** The acts that give the flat card its outline and its holes, measured as it lies. */
export function outlineActs(piece: PieceNet, lie: Lie): readonly BenchOp[] {
  const chains = cutChains(piece);
  const edges = chains.filter((chain) => !chain.closed).flatMap((chain) => edgeActs(chain, piece.blank, lie));
  const open = (['corner', 'snip', 'cutPath'] as const).flatMap((name) =>
    edges.filter((act) => act.op === name),
  );
  const holes = chains.filter((chain) => chain.closed).map((chain) => holeAct(chain, piece.blank, lie));
  return [...open, ...holes];
}

/** Square corners go first, then what is left beside them is snipped off straight; anything else is one cut along its path. */
function edgeActs(chain: CutChain, blank: Blank, lie: Lie): readonly BenchOp[] {
  const [first, middle, last] = chain.points;
  const isStraight = chain.shape !== 'curved';
  if (isStraight && chain.points.length === 2 && first && middle) return [snip(first, middle, blank, lie)];
  const keeps = keepsPart(chain.points, blank);
  const corner =
    isStraight &&
    chain.points.length === 3 &&
    first &&
    middle &&
    last &&
    squareCorner(first, middle, last, blank);
  if (!corner)
    return [
      {
        op: 'cutPath',
        points: benchPath(chain.points, blank, lie),
        curved: chain.shape !== 'straight',
        ...keeps,
      },
    ];
  const beside = [
    [first, middle],
    [middle, last],
  ] as const;
  return [
    cornerAct(corner, middle, blank, lie),
    ...beside.filter(([a, b]) => a.x !== b.x && a.y !== b.y).map(([a, b]) => snip(a, b, blank, lie)),
  ];
}

/** The blank's corner that can be cut off square up to `inner`, if all of that falls away. */
function squareCorner(first: Point, inner: Point, last: Point, blank: Blank): Point | null {
  const corners = [0, blank.across].flatMap((x) => [0, blank.up].map((y) => ({ x: ticks(x), y: ticks(y) })));
  const reaches = (corner: Point, onLevel: Point, onUpright: Point): boolean =>
    onLevel.y === corner.y &&
    onUpright.x === corner.x &&
    Math.abs(onLevel.x - corner.x) >= Math.abs(inner.x - corner.x) &&
    Math.abs(onUpright.y - corner.y) >= Math.abs(inner.y - corner.y);
  return corners.find((corner) => reaches(corner, first, last) || reaches(corner, last, first)) ?? null;
}

function cornerAct(corner: Point, inner: Point, blank: Blank, lie: Lie): CornerOp {
  const size = sizeAsItLies(blank, lie);
  const outer = toBench(blank, lie, corner);
  const p = toBench(blank, lie, inner);
  const side = outer.x === 0 ? 'left' : 'right';
  return {
    op: 'corner',
    corner: outer.y === 0 ? `near-${side}` : `far-${side}`,
    across: side === 'left' ? p.x : ticks(size.across - p.x),
    up: outer.y === 0 ? p.y : ticks(size.up - p.y),
  };
}

/** A path of the net as the bench measures it. */
const benchPath = (points: readonly Point[], blank: Blank, lie: Lie): readonly BenchPoint[] =>
  points.map((p) => toBench(blank, lie, p));

function snip(first: Point, last: Point, blank: Blank, lie: Lie): BenchOp {
  const [a = first, b = last] = benchPath([first, last], blank, lie);
  return { op: 'snip', a, b, ...keepsPart([first, last], blank) };
}

/** The net lies on the left of its cuts, and is the larger part almost always. */
const keepsPart = (path: readonly Point[], blank: Blank): { readonly keeps?: 'smaller' } => {
  const ring = blankRing(blank);
  return isLargerOnLeft(ring, ring, path) === false ? { keeps: 'smaller' } : {};
};

function holeAct(chain: CutChain, blank: Blank, lie: Lie): BenchOp {
  const ring = benchPath(
    chain.points.filter((p, i) => i === 0 || !samePoint(p, chain.points[0] ?? p)),
    blank,
    lie,
  );
  return { op: 'window', ring, hole: holeKind(chain, ring) };
}

/** What a hole is called, by its arcs and straight legs: a heart has two of each, an arch one arc over its legs. */
function holeKind({ shape, arcs, legs }: CutChain, ring: readonly BenchPoint[]): HoleKind {
  if (shape === 'straight') return 'window';
  if (shape === 'curved') {
    const [across, up] = [ring.map(({ x }) => x), ring.map(({ y }) => y)].map(
      (all) => Math.max(...all) - Math.min(...all),
    );
    return Math.abs((across ?? 0) - (up ?? 0)) <= OFF_ROUND ? 'round' : 'oval';
  }
  if (arcs === 1) return 'arch';
  if (arcs === 2 && legs === 2) return 'heart';
  return legs === 4 ? 'rounded window' : 'slot';
}
