import { samePoint } from '../../net/point';
import type { Point } from '../../net/types';
import { type Ticks, ticks } from '../../units/ticks';
import type { BenchFaultCode, BenchOp, BenchPoint, BenchTool } from '../types';
import { type BenchCard, blankRing, edgesOfCard, type Outcome, sidesOf } from './bench-card';
import { sizeAsItLies, toNet } from './card-lie';
import { cutRing, isLargerOnLeft, runsInside } from './card-outline';
import { laySegment } from './line-stretches';
import { fenceFault, isOnBlank, spanFault } from './press-scores';

type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** Cut through at the fence's distance; card stays on both sides. */
export function cutSlit(card: BenchCard, { at, from, to }: Op<'slit'>, tool: BenchTool): Outcome {
  const { up } = sizeAsItLies(card.blank, card.lie);
  const fault = fenceFault(card, at, tool) ?? spanFault(card, from, to);
  if (fault) return fault;
  if (from === 0 && to === up) return 'slit-severs-card';
  return slitThrough(card, { x: at, y: from }, { x: at, y: to });
}

/** The same by ruler, from point to point. */
export function cutSlitLine(card: BenchCard, { a, b }: Op<'slitLine'>): Outcome {
  if (!isOnBlank(card, a) || !isOnBlank(card, b)) return 'off-card';
  return samePoint(a, b) ? 'empty-span' : slitThrough(card, a, b);
}

function slitThrough(card: BenchCard, from: BenchPoint, to: BenchPoint): Outcome {
  const slit = { a: toNet(card.blank, card.lie, from), b: toNet(card.blank, card.lie, to) };
  return { ...card, slits: [...card.slits, laySegment(slit)] };
}

/** Cut a rectangle out of a corner of the card as it lies. */
export function cutCorner(card: BenchCard, { corner, across, up }: Op<'corner'>): Outcome {
  const size = sizeAsItLies(card.blank, card.lie);
  if (across <= 0 || up <= 0 || across >= size.across || up >= size.up) return 'off-card';
  return cutAway(card, cornerPath(size, corner, across, up));
}

/** The cut that frees a corner, as the card lies. */
function cornerPath(
  size: { readonly across: Ticks; readonly up: Ticks },
  corner: Op<'corner'>['corner'],
  across: Ticks,
  up: Ticks,
): readonly BenchPoint[] {
  const x = corner.endsWith('left') ? across : ticks(size.across - across);
  const y = corner.startsWith('near') ? up : ticks(size.up - up);
  const onLevelEdge = { x, y: corner.startsWith('near') ? ticks(0) : size.up };
  const onUprightEdge = { x: corner.endsWith('left') ? ticks(0) : size.across, y };
  return [onLevelEdge, { x, y }, onUprightEdge];
}

/** Cut from edge to edge, straight or not, and keep one of the two parts. */
export function cutAway(card: BenchCard, points: readonly BenchPoint[], keeps?: 'smaller'): Outcome {
  const ring = partOfCut(card, points, keeps === undefined);
  return typeof ring === 'string' ? ring : { ...card, ring };
}

/** What an act of cutting frees from the card, in the net's own frame; null for any other act. */
export function fallsAway(card: BenchCard, op: BenchOp): readonly Point[] | null {
  if (op.op === 'window') return op.ring.map((point) => toNet(card.blank, card.lie, point));
  const path = cutPathOf(card, op);
  const keepsSmaller = (op.op === 'snip' || op.op === 'cutPath') && op.keeps !== undefined;
  const ring = path && partOfCut(card, path, keepsSmaller);
  return ring === null || typeof ring === 'string' ? null : ring;
}

/** The larger or the smaller part of the card, cut along a path. */
function partOfCut(
  card: BenchCard,
  points: readonly BenchPoint[],
  larger: boolean,
): readonly Point[] | BenchFaultCode {
  if (!points.every((point) => isOnBlank(card, point))) return 'off-card';
  const path = points.map((point) => toNet(card.blank, card.lie, point));
  const left = isLargerOnLeft(blankRing(card.blank), card.ring, path) === larger;
  return cutRing(card.ring, edgesOfCard(card), left ? path : [...path].reverse());
}

function cutPathOf(card: BenchCard, op: BenchOp): readonly BenchPoint[] | null {
  switch (op.op) {
    case 'corner':
      return cornerPath(sizeAsItLies(card.blank, card.lie), op.corner, op.across, op.up);
    case 'snip':
      return [op.a, op.b];
    case 'cutPath':
      return op.points;
    default:
      return null;
  }
}

/** Cut a hole out whole. */
export function cutHole(card: BenchCard, { ring }: Op<'window'>): Outcome {
  const hole: Point[] = ring.map((point) => toNet(card.blank, card.lie, point));
  const edges = edgesOfCard(card);
  if (hole.length < 3 || !sidesOf(hole).every((side) => runsInside(edges, side))) return 'hole-not-inside';
  return { ...card, holes: [...card.holes, hole] };
}
