import type { AddOnPlace, HoleSpec } from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  changeAt,
  chosenPlace,
  type Extension,
  given,
  gluedBehind,
  inMm,
  LEFT_ROUND_MM,
  leastAt,
  type PlainPieces,
  placesOption,
  withMore,
} from './extension';
import { reachAt, withinEdge } from './free-edge';

/** At an edge of a panel, such as a rim; else it goes in the middle. */
const isBelowEdge = ({ at }: AddOnPlace): boolean => at.some((where) => where.includes('.'));

/**
 * A round hole for a ribbon that is knotted inside: a pull, a handle, or a bow that stays. It goes in the middle of a panel, or below the
 * middle of an edge. 1/4 in, 1/2 in below a rim: common practice, no source.
 */
export function ribbonHoleIn(places: readonly AddOnPlace[], plain: PlainPieces): Extension {
  const when = { given: given('ribbon', places) };
  const below = places.filter(isBelowEdge);
  return {
    options: {
      ribbon: placesOption(
        'Ribbon hole',
        below.length > 0
          ? 'A round hole for ribbon with a knot inside.'
          : 'A round hole in the middle, for ribbon with a knot inside.',
        'No ribbon hole',
        places,
      ),
    },
    symbols: {
      ribbonHole: {
        ...allowanceOf(
          'Ribbon hole',
          'Across the hole: the hole your punch makes.',
          '1/4 in',
          '1/8 in',
          '1/2 in',
        ),
        ...when,
      },
      ...(below.length > 0 && {
        ribbonDrop: {
          ...allowanceOf(
            'Hole below edge',
            'From the edge to the middle of the ribbon hole.',
            '1/2 in',
            '3/8 in',
            '2 in',
          ),
          given: given('ribbon', below),
        },
      }),
    },
    quantities: {
      ribbonMost: {
        means: 'widest ribbon hole that leaves a quarter inch of card all round, clear of tabs glued behind',
        of: (values, chosen) => {
          const place = chosenPlace('ribbon', places, chosen);
          return place !== undefined && isBelowEdge(place)
            ? mostBelow(place, plain(chosen), values)
            : leastAt('ribbon', places, plain, ({ size }, _, { glued }) => {
                const sides = size.map((length) => inMm(length, values));
                return Math.min(...sides, Math.max(...sides) - 2 * glued) - 2 * LEFT_ROUND_MM;
              })(values, chosen);
        },
      },
    },
    constraints: [
      {
        code: 'ribbon-hole-too-wide',
        symbol: 'ribbonHole',
        atMost: 'ribbonMost',
        severity: 'stop',
        ...when,
        says: 'A ribbon hole {ribbonHole} wide leaves less than a quarter inch of this panel around it, or shows a tab glued behind.',
        remedy: 'Make it at most {limit}, or leave it out.',
      },
    ],
    extend: changeAt('ribbon', places, (panel, edge) => {
      const hole: HoleSpec = { hole: 'round', across: 'ribbonHole' };
      return withMore(
        panel,
        'holes',
        edge === '' ? hole : { ...hole, at: withinEdge(panel, edge, 'ribbonDrop') },
      );
    }),
  };
}

/** Above a hole below an edge lies what its drop leaves, below it the rest of the panel, and beside it what no tab is glued behind; mm. */
function mostBelow(
  { piece: id, at }: AddOnPlace,
  pieces: ReturnType<PlainPieces>,
  values: Readonly<Record<string, number>>,
): number {
  const piece = pieces[id];
  const drop = values['ribbonDrop'] ?? 0;
  return Math.min(
    ...at.map((where) => {
      const [name = where, edge = ''] = where.split('.');
      const panel = piece?.panels[name];
      if (piece === undefined || panel === undefined) return 0;
      const { long, deep } = reachAt(panel, edge, values);
      const beside = long - 2 * Math.max(LEFT_ROUND_MM, gluedBehind(piece, name, values));
      return Math.min(beside, 2 * (drop - LEFT_ROUND_MM), 2 * (deep - drop - LEFT_ROUND_MM));
    }),
  );
}
