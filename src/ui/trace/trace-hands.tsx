import { type PointerEvent, useEffect, useRef } from 'react';
import { type Corner, moveBy, type TracePlace } from '../../core/trace';
import type { Hand, PlaceOfCard } from './use-tracing';

interface TraceHandsProps {
  readonly hand: Hand;
  readonly onHand: (hand: Hand) => void;
  readonly place: TracePlace;
  readonly onLay: (place: TracePlace) => void;
  readonly at: PlaceOfCard;
}

/** Larger than any drawing, in its units, so that a tap beside the net is taken too. */
const BEYOND = 5000;
const CROSS = 2.4;

/** Takes taps and drags in place of the drawing: two points of known distance, or the whole picture. */
export function TraceHands({ hand, onHand, place, onLay, at }: TraceHandsProps) {
  const last = useRef<Corner | null>(null);
  const taker = useRef<SVGRectElement>(null);
  // The button stands below the drawing, which a phone does not show with it.
  useEffect(() => taker.current?.ownerSVGElement?.scrollIntoView({ block: 'nearest' }), []);
  const origin = at([0, 0]);
  const scale = at([1, 0])[0] - origin[0];
  const cardAt = (event: PointerEvent<SVGElement>): Corner | null => {
    const seen = event.currentTarget.ownerSVGElement?.getScreenCTM();
    if (!seen) return null;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(seen.inverse());
    return [(x - origin[0]) / scale, (origin[1] - y) / scale];
  };
  const onPointerDown = (event: PointerEvent<SVGElement>) => {
    event.stopPropagation();
    const tapped = cardAt(event);
    if (!tapped) return;
    if (hand.does === 'point') {
      const points = hand.points.length === 2 ? [] : hand.points;
      onHand({ does: 'point', points: [...points, tapped] });
    } else {
      last.current = tapped;
      event.currentTarget.setPointerCapture(event.pointerId);
    }
  };
  const onPointerMove = (event: PointerEvent<SVGElement>) => {
    const from = last.current;
    const to = from && cardAt(event);
    if (!to) return;
    last.current = to;
    onLay(moveBy(place, to[0] - from[0], to[1] - from[1]));
  };
  const drop = () => {
    last.current = null;
  };
  return (
    <g>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: width and arrows beside the drawing do the same by keyboard */}
      <rect
        className={hand.does === 'move' ? 'trace-hands trace-hands-move' : 'trace-hands'}
        ref={taker}
        data-trace={hand.does}
        x={origin[0] - BEYOND}
        y={origin[1] - BEYOND}
        width={2 * BEYOND}
        height={2 * BEYOND}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={drop}
        onPointerCancel={drop}
        onClick={(event) => event.stopPropagation()}
      />
      {hand.does === 'point' && <Points points={hand.points.map(at)} />}
    </g>
  );
}

function Points({ points }: { readonly points: readonly (readonly [number, number])[] }) {
  const [a, b] = points;
  return (
    <g className="trace-points">
      {a && b && <line x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />}
      {points.map(([x, y], nth) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: the first stays the first
          key={nth}
          d={`M${x - CROSS} ${y}h${2 * CROSS}M${x} ${y - CROSS}v${2 * CROSS}`}
        />
      ))}
    </g>
  );
}
