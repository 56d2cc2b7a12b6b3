import { type ReactNode, useCallback, useState } from 'react';
import { type Corner, type Trace, type TracePicture, widthOf } from '../../core/trace';
import { TraceHands } from './trace-hands';
import { TraceTools } from './trace-tools';
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

interface TraceUnderProps {
  readonly picture: TracePicture;
  readonly at: PlaceOfCard;
}

/** The picture itself: plain pixels, turned about its middle. */
function TraceUnder({ picture, at }: TraceUnderProps) {
  const { place, widthPx, heightPx, bytes, type } = picture;
  // An address as long as it is shown; moving the picture makes no new one.
  const show = useCallback(
    (image: SVGImageElement | null) => {
      const address = URL.createObjectURL(new Blob([bytes], { type }));
      image?.setAttribute('href', address);
      return () => URL.revokeObjectURL(address);
    },
    [bytes, type],
  );
  const scale = at([1, 0])[0] - at([0, 0])[0];
  const [x, y] = at(place.middle);
  const width = widthOf(place, picture) * scale;
  const height = (width * heightPx) / widthPx;
  return (
    <image
      ref={show}
      x={-width / 2}
      y={-height / 2}
      width={width}
      height={height}
      opacity={place.strength}
      // the card’s y runs up, the drawing’s down
      transform={`translate(${x} ${y}) rotate(${-place.turnDeg})`}
      className="trace-picture"
    />
  );
}
