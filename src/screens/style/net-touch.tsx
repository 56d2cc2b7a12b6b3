import type { Place } from '../../core/draft/draft';
import type { NamedSide } from '../../core/net/lay-piece';
import type { PieceNet } from '../../core/net/types';
import type { At } from '../../core/plane';
import { toMm } from '../../core/units';
import { PX_PER_MM } from '../../ui/drawing/ink-on-screen';
import { keyed } from './keyed';

/** How far a finger may miss an edge: more on the free side, so that small panels can still be hit. In CSS pixels, 24 together. */
const OUTSIDE_PX = 15;
const INSIDE_PX = 9;

interface NetTouchProps {
  readonly piece: PieceNet;
  readonly sides: readonly NamedSide[];
  readonly place: Place;
  readonly at: (card: At) => At;
  /** Nothing hangs on the edge that is selected. */
  readonly free: boolean;
}

const pathOf = (points: readonly At[]) =>
  `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`;

/** What a tap can hit, laid over the net: every panel, and a wide band along every edge. What is selected is lit. */
export function NetTouch({ piece, sides, place, at, free }: NetTouchProps) {
  const point = ({ x, y }: { readonly x: number; readonly y: number }): At => at([toMm(x), toMm(y)]);
  const lit = sides.find(({ panel, edge }) => panel === place.panel && edge === place.edge);
  return (
    <g>
      {piece.faces.map(({ name, panel, ring }) => (
        <path
          key={name}
          data-panel={panel}
          d={pathOf(ring.map(point))}
          className={place.panel === panel ? 'style-face style-face-lit' : 'style-face'}
        />
      ))}
      {keyed(sides, ({ panel, edge }) => `${panel}.${edge}`).map(({ key, value: side }) => (
        <path
          key={key}
          data-panel={side.panel}
          data-edge={side.edge}
          d={pathOf(bandOf(point(side.a), point(side.b)))}
          className="style-edge"
        />
      ))}
      {lit && <LitEdge a={point(lit.a)} b={point(lit.b)} free={free} />}
    </g>
  );
}

/** A band along an edge as its ring runs in the drawing, wider on the outside. */
function bandOf([ax, ay]: At, [bx, by]: At): readonly At[] {
  const long = Math.hypot(bx - ax, by - ay) || 1;
  // y runs down in the drawing, so the outside of a counter-clockwise ring is on its left
  const [nx, ny] = [-(by - ay) / long, (bx - ax) / long];
  const [out, into] = [OUTSIDE_PX / PX_PER_MM, -INSIDE_PX / PX_PER_MM];
  return [
    [ax + nx * out, ay + ny * out],
    [bx + nx * out, by + ny * out],
    [bx + nx * into, by + ny * into],
    [ax + nx * into, ay + ny * into],
  ];
}

interface LitEdgeProps {
  readonly a: At;
  readonly b: At;
  /** Something can be added here. */
  readonly free: boolean;
}

function LitEdge({ a: [x1, y1], b: [x2, y2], free }: LitEdgeProps) {
  const [x, y] = [(x1 + x2) / 2, (y1 + y2) / 2];
  const arm = 1.6;
  return (
    <g className="style-lit">
      <line {...{ x1, y1, x2, y2 }} className="style-lit-line" />
      <circle cx={x} cy={y} r={free ? 3.2 : 1.6} className="style-lit-knob" />
      {free && (
        <path d={`M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`} className="style-lit-plus" />
      )}
    </g>
  );
}
