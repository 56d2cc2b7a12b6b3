import { samePoint } from '../../net/point';
import { ticks } from '../../units/ticks';
import { riseOf } from '../program/curve-rise';
import type { BenchFaultCode, BenchOp, BenchPoint, BenchTool } from '../types';
import { type BenchCard, edgesOfCard, faceUpOf, type Outcome } from './bench-card';
import { sizeAsItLies, toNet } from './card-lie';
import { legsOf, runsAlong } from './card-outline';
import { laySegment } from './line-stretches';

type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** A straight score at the fence. The stylus meets whatever card lies under it; what falls on waste is of no account. */
export function pressScore(card: BenchCard, { at, span }: Op<'score'>, tool: BenchTool): Outcome {
  const { up } = sizeAsItLies(card.blank, card.lie);
  const fault = fenceFault(card, at, tool) ?? (span && spanFault(card, span.from, span.to));
  if (fault) return fault;
  return scoreThrough(card, [
    { x: at, y: span ? span.from : ticks(0) },
    { x: at, y: span ? span.to : up },
  ]);
}

/** A straight score by ruler, from point to point. */
export function pressLine(card: BenchCard, { a, b }: Op<'scoreLine'>): Outcome {
  if (!isOnBlank(card, a) || !isOnBlank(card, b)) return 'off-card';
  return samePoint(a, b) ? 'empty-span' : scoreThrough(card, [a, b]);
}

/** A curved score by template; the rise it is named by must be the template's. */
export function pressCurve(card: BenchCard, { points, rise }: Op<'scoreCurve'>): Outcome {
  if (!points.every((point) => isOnBlank(card, point))) return 'off-card';
  return riseOf(points) === rise ? scoreThrough(card, points) : 'rise-is-not-the-curve';
}

function scoreThrough(card: BenchCard, points: readonly BenchPoint[]): Outcome {
  const path = points.map((point) => toNet(card.blank, card.lie, point));
  const groove = faceUpOf(card);
  return {
    ...card,
    scores: [...card.scores, ...legsOf(path).map((leg) => ({ ...laySegment(leg), groove }))],
  };
}

/** What keeps a line at `at` from being measured off the fence, if anything. */
export function fenceFault(card: BenchCard, at: number, tool: BenchTool): BenchFaultCode | null {
  const { across, up } = sizeAsItLies(card.blank, card.lie);
  if (at <= 0 || at >= across) return 'off-card';
  if (at > tool.reach) return 'beyond-reach';
  return edgeIsWhole(card, { x: ticks(0), y: ticks(0) }, { x: ticks(0), y: up }) ? null : 'fence-edge-gone';
}

/** What keeps a stretch from being measured up from the near edge, if anything. */
export function spanFault(card: BenchCard, from: number, to: number): BenchFaultCode | null {
  const { across, up } = sizeAsItLies(card.blank, card.lie);
  if (from < 0 || to > up) return 'off-card';
  if (from >= to) return 'empty-span';
  return edgeIsWhole(card, { x: ticks(0), y: ticks(0) }, { x: across, y: ticks(0) })
    ? null
    : 'near-edge-gone';
}

function edgeIsWhole(card: BenchCard, from: BenchPoint, to: BenchPoint): boolean {
  const edge = { a: toNet(card.blank, card.lie, from), b: toNet(card.blank, card.lie, to) };
  return runsAlong(edgesOfCard(card), edge);
}

export function isOnBlank(card: BenchCard, { x, y }: BenchPoint): boolean {
  const { across, up } = sizeAsItLies(card.blank, card.lie);
  return x >= 0 && x <= across && y >= 0 && y <= up;
}
