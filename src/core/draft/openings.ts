import { busyEdges, hingeOf } from '../styles/language/cut-edges';
import type { Len } from '../styles/language/types';
import { formFault } from './change-panel';
import { cutAt } from './cuts';
import {
  type Edit,
  NO_SUCH_PANEL,
  onPanel,
  type Place,
  type RectangleDraft,
  refused,
  taken,
  withPanel,
} from './draft';
import { type Hole, holesOf, withHole, withHoles } from './holes';
import { isFlatRectangle, isRectangle, isSide, type Side } from './sides';
import { middleForms } from './slits';

export type HoleKind = Hole['hole'];

/** Openings as they are usually cut. source: common practice, no source */
const USUAL: Readonly<Record<HoleKind, Hole>> = {
  window: { hole: 'window', margin: '3/4 in' },
  round: { hole: 'round', across: '1/4 in' },
  slot: { hole: 'slot', size: ['2 in', '1/2 in'] },
  slit: { hole: 'slit', long: '1 in', runs: 'across' },
};
/** source: common practice, no source */
const THUMB: string = '3/8 in';

export const addHole = (place: Place, kind: HoleKind): Edit =>
  onPanel(place, (draft, panel) => {
    if (!isFlatRectangle(panel))
      return refused(
        'no-room-for-hole',
        'An opening needs a flat panel with four square corners.',
        'Choose a wall, a floor or a lid.',
      );
    return taken(withPanel(draft, place, () => withHoles(panel, [...holesOf(panel), USUAL[kind]])));
  });

/** A length of an opening that can be set: margin, width or length, size up, and where its middle lies along the fold and out from it. */
export type HoleLength = 'margin' | 'across' | 'up' | 'along' | 'out';

export const setHole = (place: Place, at: number, length: HoleLength, text: string): Edit =>
  onPanel(place, (draft, panel) => {
    const hole = holesOf(panel)[at];
    if (!isRectangle(panel) || hole === undefined) return NO_SUCH_PANEL;
    const changed = withLength(panel, hole, length, text.trim());
    return formFault(draft, text) ?? taken(withHole(draft, place, at, () => changed));
  });

function withLength(panel: RectangleDraft, hole: Hole, length: HoleLength, form: Len): Hole {
  if (hole.hole === 'window') return { ...hole, margin: form };
  if (length === 'along' || length === 'out') {
    const [along, out] = middleForms(panel, hole);
    return { ...hole, at: length === 'along' ? [form, out] : [along, form] };
  }
  if (hole.hole === 'round') return { ...hole, across: form };
  if (hole.hole === 'slit') return { ...hole, long: form };
  return { ...hole, size: length === 'up' ? [hole.size[0], form] : [form, hole.size[1]] };
}

/** Turns a slit to run across or up on the flat net. */
export const turnSlit =
  (place: Place, at: number, runs: 'across' | 'up'): Edit =>
  (draft) =>
    taken(withHole(draft, place, at, (hole) => (hole.hole === 'slit' ? { ...hole, runs } : hole)));

export const removeHole =
  (place: Place, at: number): Edit =>
  (draft) =>
    taken(withHole(draft, place, at, () => null));

/** A half-round cut into the middle of a free edge, for a thumb; an empty length removes it. */
export const setNotch = (place: Place, edge: Side, text: string = THUMB): Edit =>
  onPanel(place, (draft, panel, piece) => {
    if (!isSide(edge)) return NO_SUCH_PANEL;
    const isBusy =
      busyEdges(piece).has(`${place.panel}.${edge}`) ||
      hingeOf(panel) === edge ||
      cutAt(panel, edge, 'edge') !== undefined;
    if (!isFlatRectangle(panel) || isBusy)
      return refused(
        'no-room-for-notch',
        'A notch needs a free straight edge: nothing may hang on it, and no seam may close there.',
        'Choose the upper edge of a wall.',
      );
    const others = (panel.notches ?? []).filter((notch) => notch.edge !== edge);
    const { notches: _, ...rest } = panel;
    if (text.trim() === '')
      return taken(withPanel(draft, place, () => (others.length ? { ...rest, notches: others } : rest)));
    return (
      formFault(draft, text) ??
      taken(withPanel(draft, place, () => ({ ...rest, notches: [...others, { edge, radius: text.trim() }] })))
    );
  });
