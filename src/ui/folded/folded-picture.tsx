import { Fragment, useMemo } from 'react';
import type { Arrangement } from '../../core/fit';
import {
  aroundFigures,
  lightOn,
  type PlacedFigure,
  putOnPaper,
  seeBottom,
  seeBox,
  seeBoxShut,
  showsInside,
} from '../../core/fold/seen/figure';
import { seeWorn, type Worn, type WornArea, wearersOf } from '../../core/fold/seen/worn';
import type { BoxNet } from '../../core/net';
import type { At, Ring } from '../../core/plane';
import { type ThingFace, thingsInView } from './things-in-view';
import './folded-picture.css';

interface FoldedPictureProps {
  readonly net: BoxNet;
  /** The card's own color; a neutral card without it. */
  readonly colour?: string;
  /** What lies inside; the card towards the eye is then seen through. */
  readonly holds?: Arrangement | undefined;
  /** What is put on it, closed; and the color of each card by its id. */
  readonly worn?: readonly Worn[];
  readonly colours?: ReadonlyMap<string, string>;
  /** Only its bottom, held up. */
  readonly bottom?: boolean;
  /** Shown in place of the closed box: its pieces at some other moment. */
  readonly figures?: readonly PlacedFigure[];
}

const ROOM = 0.12;
const closed = (ring: Ring) => `${path(ring)}Z`;
const path = (points: Ring) => `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;

/** The folded box, in its card's color, with daylight from the left. It decorates a name beside it, and says nothing the page does not. */
export function FoldedPicture({
  net,
  colour = '#f4efe4',
  holds,
  worn = NOTHING,
  colours,
  bottom = false,
  figures: given,
}: FoldedPictureProps) {
  const { left, top, width, height, figures } = useMemo(
    () => viewBox(given ?? (bottom ? seeBottom(net) : seen(net, worn)), { net, holds, worn }),
    [net, holds, bottom, worn, given],
  );
  const margin = ROOM * Math.max(width, height);
  return (
    <svg
      className="folded-picture"
      viewBox={`${left - margin} ${top - margin} ${width + 2 * margin} ${height + 2 * margin}`}
      aria-hidden="true"
    >
      {figures.map(({ id, faces, lines, things, bows }) => {
        const drawn = (face: PageFace) => {
          const fill = shade(colour, face.light, face.inside);
          return (
            <Fragment key={face.name}>
              <path
                d={face.outline}
                fill={fill}
                fillRule="evenodd"
                stroke={fill}
                className={things.length > 0 && !face.inside ? 'folded-face folded-through' : 'folded-face'}
              />
              {face.worn.map((area) => (
                <path
                  key={closed(area.ring)}
                  d={closed(area.ring)}
                  fill={shade(colourOf(area, colours), face.light, false)}
                />
              ))}
            </Fragment>
          );
        };
        return (
          <Fragment key={id}>
            {things.length === 0 ? faces.map(drawn) : faces.filter(({ inside }) => inside).map(drawn)}
            {things.map(drawnThing)}
            {things.length > 0 && faces.filter(({ inside }) => !inside).map(drawn)}
            <path d={lines} className="folded-line" />
            {bows.map((area) => (
              <path
                key={closed(area.ring)}
                d={closed(area.ring)}
                fill={colourOf(area, colours)}
                className="folded-bow"
              />
            ))}
          </Fragment>
        );
      })}
    </svg>
  );
}

const NOTHING: readonly Worn[] = [];
/** Ribbon and card whose color nobody has given. */
const USUAL_COLOURS = { ribbon: '#a4553f', card: '#d8d2c2' } as const;

const colourOf = ({ id, of }: WornArea, colours: ReadonlyMap<string, string> | undefined): string =>
  colours?.get(id) ?? USUAL_COLOURS[of];

const seen = (net: BoxNet, worn: readonly Worn[]) => (worn.length > 0 ? seeBoxShut(net) : seeBox(net, true));

interface PageFace {
  readonly name: string | undefined;
  readonly outline: string;
  readonly light: number;
  readonly inside: boolean;
  readonly worn: readonly WornArea[];
}

interface InView {
  readonly net: BoxNet;
  readonly holds: Arrangement | undefined;
  readonly worn: readonly Worn[];
}

const drawnThing = ({ ring, light }: ThingFace, at: number) => (
  <path key={at} d={`${path(ring)}Z`} className={`folded-thing folded-thing-${Math.round(light * 4)}`} />
);

/** The box on the page: y runs down there. */
function viewBox(placed: readonly PlacedFigure[], { net, holds, worn }: InView) {
  const { left, right, bottom, top } = aroundFigures(placed);
  const wearers = wearersOf(placed);
  const holder = placed.findIndex(({ figure: { piece } }) => piece.shell.length > 0);
  const figures = placed.map(({ figure, dx, dy }, at) => {
    const onPage = ([x, y]: At): At => [x + dx, -(y + dy)];
    const { covers, lines } = putOnPaper(figure, onPage);
    const areas = worn.length > 0 ? seeWorn(figure, worn, onPage, covers, wearers[at]!) : [];
    const inside =
      holds && at === holder ? thingsInView(holds, figure.piece, net.caliperUm, figure.view) : [];
    return {
      id: figure.piece.id,
      faces: figure.order.map(
        (face): PageFace => ({
          name: figure.piece.faces[face]?.name,
          outline: [covers[face]?.ring ?? [], ...(covers[face]?.holes ?? [])]
            .map((ring) => `${path(ring)}Z`)
            .join(''),
          light: lightOn(figure, face),
          inside: showsInside(figure, face),
          worn: areas.filter((area) => area.face === face),
        }),
      ),
      things: inside.map(({ ring, light }): ThingFace => ({ ring: ring.map(onPage), light })),
      lines: [
        ...lines().map(({ ends }) => ends),
        ...areas.flatMap(({ face, edges }) => (face === null ? [] : edges)),
      ]
        .map(path)
        .join(''),
      bows: areas.filter(({ face }) => face === null),
    };
  });
  return { left, top: -top, width: right - left, height: top - bottom, figures };
}

/** The card's color in this light; the inside of colored card is paler. */
function shade(colour: string, light: number, inside: boolean): string {
  const lit = 0.62 + 0.4 * light;
  const pale = inside ? 0.22 : 0;
  const part = (at: number) => {
    const own = Number.parseInt(colour.slice(at, at + 2), 16);
    return Math.round(Math.min(255, (own + (250 - own) * pale) * lit));
  };
  return `rgb(${part(1)} ${part(3)} ${part(5)})`;
}
