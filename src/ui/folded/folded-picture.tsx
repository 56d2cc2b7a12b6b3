import { useMemo } from 'react';
import type { Arrangement } from '../../core/fit';
import type { BoxNet } from '../../core/net';
import { lookFrom } from './camera';
import { type PageFace, viewFolded } from './folded-view';
import { type ThingFace, thingsInView } from './things-in-view';
import './folded-picture.css';

interface FoldedPictureProps {
  readonly net: BoxNet;
  /** The card's own colour; a neutral card without it. */
  readonly colour?: string;
  /** What lies inside; the card towards the eye is then seen through. */
  readonly holds?: Arrangement | undefined;
}

/** From the right, and from a standing maker's eyes. */
const EYE = lookFrom(32, 24);
const ROOM = 0.12;
const path = (points: readonly (readonly [number, number])[]) =>
  `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;

/** The folded box, in its card's colour, with daylight from the left. It decorates a name beside it, and says nothing the page does not. */
export function FoldedPicture({ net, colour = '#f4efe4', holds }: FoldedPictureProps) {
  const view = useMemo(() => viewFolded(net, EYE), [net]);
  const things = useMemo(
    () => (holds ? thingsInView(holds.placed, holds.size, view.room, EYE) : []),
    [holds, view],
  );
  const { left, top, width, height } = view.box;
  const margin = ROOM * Math.max(width, height);
  const isBehind = ({ side }: PageFace) => side === 'inside';
  const drawn = (face: PageFace, at: number) => {
    const fill = shade(colour, face);
    return (
      <g key={at} className={holds && !isBehind(face) ? 'folded-through' : undefined}>
        <path d={`${path(face.ring)}Z`} fill={fill} stroke={fill} className="folded-face" />
        <path d={face.lines.map(path).join('')} className="folded-line" />
      </g>
    );
  };
  return (
    <svg
      className="folded-picture"
      viewBox={`${left - margin} ${top - margin} ${width + 2 * margin} ${height + 2 * margin}`}
      aria-hidden="true"
    >
      <path className="folded-shadow" d={`${path(view.shadow)}Z`} />
      {holds ? view.faces.filter(isBehind).map(drawn) : view.faces.map(drawn)}
      {things.map(drawnThing)}
      {holds && view.faces.filter((face) => !isBehind(face)).map(drawn)}
    </svg>
  );
}

const drawnThing = ({ ring, light }: ThingFace, at: number) => (
  <path key={at} d={`${path(ring)}Z`} className={`folded-thing folded-thing-${Math.round(light * 4)}`} />
);

/** The card's colour in this light; the inside of coloured card is paler. */
function shade(colour: string, { light, side }: PageFace): string {
  const lit = 0.62 + 0.4 * light;
  const pale = side === 'inside' ? 0.22 : 0;
  const part = (at: number) => {
    const own = Number.parseInt(colour.slice(at, at + 2), 16);
    return Math.round(Math.min(255, (own + (250 - own) * pale) * lit));
  };
  return `rgb(${part(1)} ${part(3)} ${part(5)})`;
}
