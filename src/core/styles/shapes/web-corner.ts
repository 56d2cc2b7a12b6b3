import { toDegrees } from '../../units/angles';
import type { Quantity, Values } from '../language/types';

/** Stops on the way up at which the webs' angles are given; the last part of the way lays them flat. */
export const WEB_STOPS = [1, 2, 3, 4, 5] as const;

/** How far a corner leans out of a wall's own upright, radians. */
export const leanOf = ({ flare = 0, slant = 1 }: Values): number => Math.atan(flare / slant);
/** How far a wall turns up from the base until the corners close, radians. */
const riseOf = ({ flare = 0, slant = 1 }: Values): number => Math.acos(flare / slant);

/** The fold between a wall and a web that stands out of its corner like a fin, both walls beside it raised by `rise`, degrees. */
function finDeg(values: Values, rise: number): number {
  const [lean, half] = [leanOf(values), Math.PI / 4 - leanOf(values)];
  // the corner edge of the front wall: along the base, out from it, up
  const edge = [Math.sin(lean), Math.cos(lean) * Math.cos(rise), Math.cos(lean) * Math.sin(rise)] as const;
  const level = (edge[0] + edge[1]) / Math.SQRT2;
  // the webs' crease lies in the plane between both walls, and keeps its angle to the corner edge
  const up = Math.atan2(edge[2], level) - Math.acos(Math.min(1, Math.cos(half) / Math.hypot(level, edge[2])));
  const crease = [Math.cos(up) / Math.SQRT2, Math.cos(up) / Math.SQRT2, Math.sin(up)] as const;
  const inward = -Math.sin(rise) * crease[1] + Math.cos(rise) * crease[2];
  // straight on over the corner edge, in the plane of the wall
  const on = [Math.cos(lean), -Math.sin(lean) * Math.cos(rise), -Math.sin(lean) * Math.sin(rise)] as const;
  const ahead = crease[0] * on[0] + crease[1] * on[1] + crease[2] * on[2];
  return toDegrees(Math.atan2(inward, ahead));
}

/** The same steps as text, for a style file: degrees, and shares of the slant. */
export const WEB_WORKINGS: Readonly<Record<string, string>> = {
  lean: 'atan(flare / slant)',
  upright: 'acos(flare / slant)',
  ...Object.fromEntries(
    WEB_STOPS.flatMap((stop) => {
      const rise = `${stop / WEB_STOPS.length} * upright`;
      const high = `cos(lean) * sin(${rise})`;
      return [
        [`level${stop}`, `(sin(lean) + cos(lean) * cos(${rise})) / sqrt(2)`],
        [
          `up${stop}`,
          `atan2(${high}, level${stop}) - acos(min(1, cos(45 - lean) / hypot(level${stop}, ${high})))`,
        ],
      ];
    }),
  ),
};

function finText(stop: number): string {
  const [rise, up] = [`${stop / WEB_STOPS.length} * upright`, `up${stop}`];
  const inward = `cos(${rise}) * sin(${up}) - sin(${rise}) * cos(${up}) / sqrt(2)`;
  const ahead = `cos(${up}) / sqrt(2) * (cos(lean) - sin(lean) * cos(${rise})) - sin(${up}) * sin(lean) * sin(${rise})`;
  return `atan2(${inward}, ${ahead})`;
}

export const WEB_ANGLES: Readonly<Record<string, Quantity>> = {
  wallFold: {
    means: 'fold of a wall at the base',
    formula: 'upright',
    of: (values) => toDegrees(riseOf(values)),
  },
  endWebFold: {
    means: 'fold that lays a web along the outside of an end wall',
    formula: 'acos((flare / slant) ** 2)',
    of: ({ flare = 0, slant = 1 }) => toDegrees(Math.acos((flare / slant) ** 2)),
  },
  rimFold: {
    means: 'fold of a flap at the rim, or of the tuck',
    formula: '180 - upright',
    of: (values) => 180 - toDegrees(riseOf(values)),
  },
  ...Object.fromEntries(
    WEB_STOPS.flatMap((stop): readonly (readonly [string, Quantity])[] => {
      const part = stop / WEB_STOPS.length;
      return [
        [
          `rise${stop}`,
          {
            means: 'fold of a wall part of the way up',
            formula: `${part} * upright`,
            of: (values) => toDegrees(part * riseOf(values)),
          },
        ],
        [
          `fin${stop}`,
          {
            means: 'fold of a web that stands out of its corner part of the way up',
            formula: finText(stop),
            of: (values) => finDeg(values, part * riseOf(values)),
          },
        ],
      ];
    }),
  ),
};
