import { edgesOf, hingeOf, OPPOSITE } from '../language/cut-edges';
import { bothEnds } from '../language/define';
import type { AddOnPlace, Chosen, CutSpec, PanelSpec, PieceSpec, Values } from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  changeAt,
  chosenPlace,
  type Extension,
  given,
  inMm,
  type PlainPieces,
  placesOption,
  withMore,
} from './extension';

/** Card left straight between two rounded corners, and beside one. source: our choice, 1/8 in */
const LEFT_STRAIGHT_MM = 3.175;

/** Free corners cut round, each named by the edge that begins there (`'flap.up'`). Radius 1/4 in: what most corner punches cut, common practice, no source. */
export function roundCornersAt(
  places: readonly AddOnPlace[],
  plain: PlainPieces,
  /** Where the style may have a thumb notch. */
  notches: readonly AddOnPlace[] = [],
  /** Where the style may have a slot or a ribbon hole, by the length across it. */
  openings: readonly Opening[] = [],
): Extension {
  const when = { given: given('corners', places) };
  return {
    options: {
      corners: placesOption(
        'Rounded corners',
        'Free corners cut round: along a coin, or with a corner punch.',
        'Square corners',
        places,
      ),
    },
    symbols: {
      cornerRadius: {
        ...allowanceOf(
          'Corner radius',
          'Of the round that each corner is cut to.',
          '1/4 in',
          '1/8 in',
          '1 in',
        ),
        ...when,
      },
    },
    quantities: {
      cornerMost: {
        means:
          'largest radius that leaves the edges beside a corner straight for an eighth of an inch, and meets no opening',
        of: (values, chosen) => {
          const place = chosenPlace('corners', places, chosen);
          const piece = place && plain(chosen)[place.piece];
          if (!place || !piece) return 0;
          const notched = chosenPlace('notch', notches, chosen)?.at ?? [];
          return Math.min(
            mostAt(place, piece, values, notched),
            ...openings.map((opening) => mostBeside(opening, place, piece, values, chosen)),
          );
        },
      },
    },
    constraints: [
      {
        code: 'corners-meet',
        symbol: 'cornerRadius',
        atMost: 'cornerMost',
        severity: 'stop',
        ...when,
        says: 'Corners rounded by {cornerRadius} leave nothing straight between them, or meet a notch, a slot or a hole.',
        remedy: 'Make the radius at most {limit}, or leave the corners square.',
      },
    ],
    extend: changeAt('corners', places, (panel, edge) => {
      const cut: CutSpec = { at: edge as CutSpec['at'], cut: 'round', size: 'cornerRadius' };
      return withMore(panel, 'cuts', cut);
    }),
  };
}

/** A slot or a hole in the middle of a panel, and the length across it. */
export interface Opening {
  readonly option: 'slot' | 'ribbon';
  readonly places: readonly AddOnPlace[];
  readonly across: string;
}

/** The largest radius whose corners end beside an opening in the middle of their panel, whatever its height. */
function mostBeside(
  { option, places, across }: Opening,
  { at }: AddOnPlace,
  { panels }: PieceSpec,
  values: Values,
  chosen: Chosen,
): number {
  const open = chosenPlace(option, places, chosen)?.at ?? [];
  return Math.min(
    ...at.flatMap((where) => {
      const [name = where] = where.split('.');
      const panel = panels[name];
      if (panel === undefined || !('size' in panel) || !open.includes(name)) return [];
      return [(inMm(panel.size[0], values) - (values[across] ?? 0)) / 2 - LEFT_STRAIGHT_MM];
    }),
  );
}

/** An edge shares what is straight of it with the corner at its other end, if that is rounded too, and with a notch in its middle. */
function mostAt(
  { at }: AddOnPlace,
  { panels }: PieceSpec,
  values: Values,
  notched: readonly string[],
): number {
  return Math.min(
    ...at.flatMap((where) => {
      const [name = where, corner = ''] = where.split('.');
      const panel = panels[name];
      if (panel === undefined) return [0];
      const names = edgesOf(panel);
      const here = names.indexOf(corner);
      const edgeAt = (place: number): string => names[(place + names.length) % names.length] ?? '';
      return [here - 1, here].map((edge) => {
        const ends = [edge, edge + 1].filter((end) => at.includes(`${name}.${edgeAt(end)}`)).length;
        const long = leastLong(panel, edgeAt(edge), values);
        const isNotched = notched.includes(`${name}.${edgeAt(edge)}`);
        return (isNotched ? long / 2 - (values['notchRadius'] ?? 0) : long / ends) - LEFT_STRAIGHT_MM;
      });
    }),
  );
}

/** How long an edge of a panel is at least, mm: a side of an outline runs at least as far as its corner stands out. */
function leastLong(panel: PanelSpec, edge: string, values: Values): number {
  const of = (form: string): number => inMm(form, values);
  if ('outline' in panel) {
    const at = Number(edge.slice(1)) - 2;
    const [from, to] = [panel.outline[at], panel.outline[at + 1]];
    if (from && to) return Math.hypot(of(from[0]) - of(to[0]), of(from[1]) - of(to[1]));
    return of((from ?? to)?.[1] ?? '0');
  }
  if (!('size' in panel)) return 0;
  const isLevel = edge === 'up' || edge === 'down';
  const isFree = hingeOf(panel) === OPPOSITE[edge];
  const drawn = isFree ? bothEnds(panel.taper).reduce((sum, end) => sum + of(end), 0) : 0;
  return of(panel.size[isLevel ? 0 : 1]) - drawn;
}
