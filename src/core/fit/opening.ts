import type { BoxNet } from '../net/types';
import type { Contents } from '../rows/contents';
import { ticksOfMm } from '../rows/lengths';
import type { BoxStyle, Role } from '../styles/language/types';
import { type Ticks, ticks } from '../units';
import { turnToFit } from './packet-diagonal';
import type { Arrangement } from './types';

/** Where things go in, and what holds them back there. */
export interface Opening {
  readonly way: 'from above' | 'from the side';
  /** Clear width and depth (from above), or the two clear sides of the end (from the side). */
  readonly clear: readonly [Ticks, Ticks];
  /** Card taken off for dust flaps that stand in the opening. */
  readonly flaps: Ticks;
}

/**
 * The opening of a box as it is laid. Things go in from above, past the dust flaps where the style has some (one layer of card at each
 * side), unless the style says through which end they slide. A drawer is filled from above before it slides into its sleeve.
 */
export function openingOf({ slidesInBy }: BoxStyle, net: BoxNet): Opening {
  const { inside, values } = net;
  if (slidesInBy !== undefined)
    return {
      way: 'from the side',
      clear: [inside[slidesInBy[0]], inside[slidesInBy[1]]],
      flaps: ticks(0),
    };
  const flaps = hasRole(net, 'dustFlap') ? ticks(2 * (values['t'] ?? 0)) : ticks(0);
  return { way: 'from above', clear: [ticks(inside.width - flaps), inside.depth], flaps };
}

/** Whether the arrangement passes the opening as it lies, air not counted; turned about the upright if it is one flat packet. */
export function passesOpening({ size }: Arrangement, { way, clear }: Opening): boolean {
  const [w, d, h] = size.map((mm) => Math.ceil(mm * 320 - 1e-6)) as [number, number, number];
  const front: readonly [number, number] = way === 'from above' ? [w, d] : [Math.min(w, d), h];
  return turnToFit(front, clear) === 0;
}

/** What keeps something from standing out above the rim; null where nothing does. */
export type Protrusion =
  | { readonly code: 'closed-top'; readonly item: string }
  | { readonly code: 'rim-too-low'; readonly item: string; readonly least: Ticks; readonly has: Ticks };

const CLOSING: readonly Role[] = ['lid', 'tuck', 'cover', 'endFlap'];
const OVER_ANOTHER: readonly string[] = ['lid', 'sleeve'];

/**
 * Things that stand out above the rim: only where the top stays open, and with at least half of each below the rim, so that its middle of
 * weight stays in the box (an even weight is taken). source: common practice, no source.
 */
export function protrusionsOf(contents: Contents, style: BoxStyle, net: BoxNet): readonly Protrusion[] {
  const has = net.inside.height;
  const closes =
    style.roof !== 'open' &&
    (CLOSING.some((role) => hasRole(net, role)) || net.pieces.some(({ id }) => OVER_ANOTHER.includes(id)));
  return contents.items.flatMap((item): Protrusion[] => {
    if (item.aboveRimMm === 0) return [];
    if (closes) return [{ code: 'closed-top', item: item.name }];
    const { size } = item;
    const tall = ('heightMm' in size ? size.heightMm : size.diameterMm) + 2 * item.wrapMm;
    const least = ticks(Math.ceil(ticksOfMm(tall) / 2));
    return has < least ? [{ code: 'rim-too-low', item: item.name, least, has }] : [];
  });
}

const hasRole = ({ pieces }: BoxNet, role: Role): boolean =>
  pieces.some(({ faces }) => faces.some((face) => face.role === role));
