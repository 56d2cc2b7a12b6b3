import type { Contents } from '../../../shared/contents';
import { ticksOfMm } from '../../../shared/lengths';
import { lengthOf, nameValues, type Sizing } from '../net/name-values';
import { piecesOf } from '../styles/define';
import type { BoxStyle, Role } from '../styles/types';
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

const FROM_THE_SIDE = ['pillow-pack', 'envelope-box', 'wallet'];

/**
 * The opening of a box at these sizes. Things go in from above, past the dust flaps where the style has some (one layer of card at each
 * side); into a wallet, an envelope or a pillow they slide from the side. A drawer is filled from above before it slides into its sleeve.
 */
export function openingOf(style: BoxStyle, sizing: Sizing): Opening {
  const values = nameValues(style, sizing);
  const [width, depth, height] = style.inside.map((text) => lengthOf(text, values)) as [Ticks, Ticks, Ticks];
  if (FROM_THE_SIDE.includes(style.id))
    return {
      way: 'from the side',
      clear: [width, style.id === 'pillow-pack' ? depth : height],
      flaps: ticks(0),
    };
  const thick = values.lengths['t'] ?? ticks(0);
  const flaps = hasRole(style, sizing, 'dustFlap') ? ticks(2 * thick) : ticks(0);
  return { way: 'from above', clear: [ticks(width - flaps), depth], flaps };
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
const MAY_STAND_OUT = ['gable-top']; // the roof of a gable stands open round it

/**
 * Things that stand out above the rim: only where the top stays open, and with at least half of each below the rim, so that its middle of
 * weight stays in the box (an even weight is taken). source: common practice, no source.
 */
export function protrusionsOf(contents: Contents, style: BoxStyle, sizing: Sizing): readonly Protrusion[] {
  const values = nameValues(style, sizing);
  const has = lengthOf(style.inside[2], values);
  const closes =
    !MAY_STAND_OUT.includes(style.id) &&
    (CLOSING.some((role) => hasRole(style, sizing, role)) ||
      Object.keys(piecesOf(style, sizing.options)).some((id) => id === 'lid' || id === 'sleeve'));
  return contents.items.flatMap((item): Protrusion[] => {
    if (item.aboveRimMm === 0) return [];
    if (closes) return [{ code: 'closed-top', item: item.name }];
    const { size } = item;
    const tall = ('heightMm' in size ? size.heightMm : size.diameterMm) + 2 * item.wrapMm;
    const least = ticks(Math.ceil(ticksOfMm(tall) / 2));
    return has < least ? [{ code: 'rim-too-low', item: item.name, least, has }] : [];
  });
}

const hasRole = (style: BoxStyle, { options }: Sizing, role: Role): boolean =>
  Object.values(piecesOf(style, options)).some(({ panels }) =>
    Object.values(panels).some((panel) => panel.role === role),
  );
