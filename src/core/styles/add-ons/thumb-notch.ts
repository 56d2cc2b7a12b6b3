import type { AddOnPlace, NotchSpec, PieceSpec, Values } from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  changeAt,
  chosenPlace,
  type Extension,
  given,
  gluedBehind,
  inMm,
  LEFT_ROUND_MM,
  type PlainPieces,
  placesOption,
  withMore,
} from './extension';
import { reachAt } from './free-edge';

/** A half-round in the middle of a free edge. Radius 1/2 in on a drawer's sleeve: common practice, no source. */
export function thumbNotchIn(places: readonly AddOnPlace[], plain: PlainPieces): Extension {
  const when = { given: given('notch', places) };
  return {
    options: {
      notch: placesOption(
        'Thumb notch',
        'A half circle cut out of an edge, for your thumb.',
        'No notch',
        places,
      ),
    },
    symbols: {
      notchRadius: {
        ...allowanceOf(
          'Notch radius',
          'Depth of the half-round, and half its width.',
          '3/8 in',
          '3/16 in',
          '1 in',
        ),
        // shallow, as a lid is that has one from the start
        ...(places.some(({ forNew }) => forNew) ? { forNew: '1/4 in' } : {}),
        ...when,
      },
    },
    quantities: {
      notchMost: {
        means:
          'largest notch that leaves a quarter inch of card beside and below it, clear of tabs glued behind',
        of: (values, chosen) => {
          const place = chosenPlace('notch', places, chosen);
          const piece = place && plain(chosen)[place.piece];
          if (place === undefined || piece === undefined) return 0;
          return Math.min(...place.at.map((where) => mostAt(piece, where, values, place.at)));
        },
      },
    },
    constraints: [
      {
        code: 'notch-too-large',
        symbol: 'notchRadius',
        atMost: 'notchMost',
        severity: 'stop',
        ...when,
        says: 'A notch of radius {notchRadius} leaves less than a quarter inch of this panel beside or below it, or shows a tab glued behind.',
        remedy: 'Make it at most {limit}, or leave the notch out.',
      },
    ],
    extend: changeAt('notch', places, (panel, edge) => {
      const notch: NotchSpec = { edge: edge as NotchSpec['edge'], radius: 'notchRadius' };
      return withMore(panel, 'notches', notch);
    }),
  };
}

/** In the middle of an edge, the notch leaves card beside and below it; of a lens flap it takes no more than half, since that bends. */
function mostAt(piece: PieceSpec, where: string, values: Values, notched: readonly string[]): number {
  const [name = where, edge = ''] = where.split('.');
  const panel = piece.panels[name];
  if (panel === undefined) return 0;
  if ('lens' in panel) {
    const wall = piece.panels[panel.on?.split('.')[0] ?? ''];
    if (wall === undefined || !('size' in wall)) return 0;
    const deep = inMm(panel.lens, values) + inMm(wall.bow ?? '0', values);
    return Math.min(reachAt(wall, edge, values).long / 4, deep - LEFT_ROUND_MM);
  }
  const { long, deep } = reachAt(panel, edge, values);
  const open = notched.map((at) => at.split('.')[0] ?? at);
  return Math.min(long / 2 - gluedBehind(piece, name, values, open), deep) - LEFT_ROUND_MM;
}
