import { type ReactNode, useState } from 'react';
import type { Corner, Trace } from '../../core/trace';
import { TraceHands } from './trace-hands';
import { TraceTools } from './trace-tools';
import { TraceUnder } from './trace-under';
import './trace.css';

/** The flat card that it lies under, millimeters. */
export interface TracedNet {
  readonly wideMm: number;
  readonly highMm: number;
}

/** What a tap or a drag on the net does to the picture just now. */
export type Hand =
  | { readonly does: 'nothing' | 'move' }
  | { readonly does: 'point'; readonly points: readonly Corner[] };
export const IDLE: Hand = { does: 'nothing' };

/** Where a point of the card, in millimeters, comes to be in the drawing. */
export type PlaceOfCard = (card: Corner) => readonly [x: number, y: number];

interface Tracing {
  /** For `under` of a drawing: the picture. */
  readonly under: (at: PlaceOfCard) => ReactNode;
  /** For `over`: what takes taps and drags; null while they are the drawing’s own. */
  readonly over: (at: PlaceOfCard) => ReactNode;
  /** Beside the drawing. */
  readonly tools: ReactNode;
}

/** A faint picture under a net, at true size, with everything to lay it there: for any page that shows a net. */
export function useTracing(trace: Trace, net: TracedNet): Tracing {
  const { picture, lay } = trace;
  const [hand, setHand] = useState<Hand>(IDLE);
  return {
    under: (at) => (picture?.place.shown ? <TraceUnder picture={picture} at={at} /> : null),
    over: (at) =>
      picture && hand.does !== 'nothing' ? (
        <TraceHands hand={hand} onHand={setHand} place={picture.place} onLay={lay} at={at} />
      ) : null,
    tools: <TraceTools trace={trace} net={net} hand={hand} onHand={setHand} />,
  };
}
