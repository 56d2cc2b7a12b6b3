import { Fragment, useMemo } from 'react';
import { aroundFigures, lightOn, putOnPaper, seeBox, showsInside } from '../../core/fold/seen/figure';
import type { BoxNet } from '../../core/net';
import type { Ring } from '../../core/plane';
import './folded-picture.css';

interface FoldedPictureProps {
  readonly net: BoxNet;
  /** The card's own colour; a neutral card without it. */
  readonly colour?: string;
}

const ROOM = 0.12;
const path = (points: Ring) => `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;

/** The folded box, in its card's colour, with daylight from the left. It decorates a name beside it, and says nothing the page does not. */
export function FoldedPicture({ net, colour = '#f4efe4' }: FoldedPictureProps) {
  const { left, top, width, height, figures } = useMemo(() => viewBox(net), [net]);
  const margin = ROOM * Math.max(width, height);
  return (
    <svg
      className="folded-picture"
      viewBox={`${left - margin} ${top - margin} ${width + 2 * margin} ${height + 2 * margin}`}
      aria-hidden="true"
    >
      {figures.map(({ id, faces, lines }) => (
        <Fragment key={id}>
          {faces.map(({ name, outline, light, inside }) => {
            const fill = shade(colour, light, inside);
            return (
              <path
                key={name}
                d={outline}
                fill={fill}
                fillRule="evenodd"
                stroke={fill}
                className="folded-face"
              />
            );
          })}
          <path d={lines} className="folded-line" />
        </Fragment>
      ))}
    </svg>
  );
}

/** The box on the page: y runs down there. */
function viewBox(net: BoxNet) {
  const placed = seeBox(net, true);
  const { left, right, bottom, top } = aroundFigures(placed);
  const figures = placed.map(({ figure, dx, dy }) => {
    const { covers, lines } = putOnPaper(figure, ([x, y]) => [x + dx, -(y + dy)]);
    return {
      id: figure.piece.id,
      faces: figure.order.map((face) => ({
        name: figure.piece.faces[face]?.name,
        outline: [covers[face]?.ring ?? [], ...(covers[face]?.holes ?? [])]
          .map((ring) => `${path(ring)}Z`)
          .join(''),
        light: lightOn(figure, face),
        inside: showsInside(figure, face),
      })),
      lines: lines()
        .map(({ ends }) => path(ends))
        .join(''),
    };
  });
  return { left, top: -top, width: right - left, height: top - bottom, figures };
}

/** The card's colour in this light; the inside of coloured card is paler. */
function shade(colour: string, light: number, inside: boolean): string {
  const lit = 0.62 + 0.4 * light;
  const pale = inside ? 0.22 : 0;
  const part = (at: number) => {
    const own = Number.parseInt(colour.slice(at, at + 2), 16);
    return Math.round(Math.min(255, (own + (250 - own) * pale) * lit));
  };
  return `rgb(${part(1)} ${part(3)} ${part(5)})`;
}
