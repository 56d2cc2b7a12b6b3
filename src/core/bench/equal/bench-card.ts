import type { Blank, Point } from '../../net/types';
import type { BenchFaultCode } from '../types';
import type { Lie } from './card-lie';
import type { LaidSegment, Segment } from './line-stretches';

export interface FoldedScore extends LaidSegment {
  readonly deg: number;
  readonly panel: string;
}

/** The card on the virtual bench. Everything is kept in the net's own frame, however the card lies. */
export interface BenchCard {
  readonly blank: Blank;
  readonly lie: Lie;
  /** What is left of the blank, counter-clockwise. */
  readonly ring: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  readonly scores: readonly LaidSegment[];
  readonly slits: readonly LaidSegment[];
  readonly folds: readonly FoldedScore[];
  /** What was glued and closed, in order. */
  readonly acts: readonly string[];
}

/** What an act makes of the card, or why it cannot be done. */
export type Outcome = BenchCard | BenchFaultCode;

export const isFault = (outcome: Outcome): outcome is BenchFaultCode => typeof outcome === 'string';

/** The sides of a closed ring as segments. */
export const sidesOf = (ring: readonly Point[]): readonly Segment[] =>
  ring.map((a, i) => ({ a, b: ring[(i + 1) % ring.length] ?? a }));

/** Every edge of the card: its outline and its holes. */
export const edgesOfCard = (card: BenchCard): readonly Segment[] =>
  [card.ring, ...card.holes].flatMap(sidesOf);
