import type { Blank, Point } from '../../net/types';
import { type Ticks, ticks } from '../../units/ticks';
import type { BenchFaultCode, CardFace } from '../types';
import type { Lie } from './card-lie';
import type { LaidSegment, Segment } from './line-stretches';

/** A score as it was pressed: on which face the groove lies. */
interface PressedScore extends LaidSegment {
  readonly groove: CardFace;
}

/** The card on the virtual bench. Everything is kept in the net's own frame, however the card lies. */
export interface BenchCard {
  readonly blank: Blank;
  readonly lie: Lie;
  /** What is left of the blank, counter-clockwise. */
  readonly ring: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  readonly scores: readonly PressedScore[];
  readonly slits: readonly LaidSegment[];
  /** How the scores were creased; null while the card is flat. */
  readonly creased: 'bead' | 'groove' | null;
  /** The fence's side, which tells the faces of a lie apart. */
  readonly fence: 'left' | 'right';
  /** What was stuck, glued and closed, in order. */
  readonly acts: readonly string[];
}

/** What an act makes of the card, or why it cannot be done. */
export type Outcome = BenchCard | BenchFaultCode;

export const isFault = (outcome: Outcome): outcome is BenchFaultCode => typeof outcome === 'string';

/** Which face of the card lies up. Measured from a fence on the right everything is mirrored, the inside too. */
export const faceUpOf = ({ lie, fence }: Pick<BenchCard, 'lie' | 'fence'>): CardFace =>
  lie.mirrored === (fence === 'right') ? 'inside' : 'outside';

/** The uncut card's corners, counter-clockwise. */
export const blankRing = ({ across, up }: Blank): readonly Point[] => {
  const at = (x: Ticks, y: Ticks): Point => ({ x, y });
  return [at(ticks(0), ticks(0)), at(across, ticks(0)), at(across, up), at(ticks(0), up)];
};

/** The sides of a closed ring as segments. */
export const sidesOf = (ring: readonly Point[]): readonly Segment[] =>
  ring.map((a, i) => ({ a, b: ring[(i + 1) % ring.length] ?? a }));

/** Every edge of the card: its outline and its holes. */
export const edgesOfCard = (card: BenchCard): readonly Segment[] =>
  [card.ring, ...card.holes].flatMap(sidesOf);
