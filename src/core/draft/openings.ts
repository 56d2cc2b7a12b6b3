import type { Len } from '../styles/language/types';
import { formFault } from './change-panel';
import {
  type Edit,
  NO_SUCH_PANEL,
  onPanel,
  type PanelDraft,
  type Place,
  panelOf,
  type RectangleDraft,
  refused,
  taken,
  withPanel,
} from './draft';
import { hangsOn, hungOn, isRectangle, isSide, OPPOSITE, type Side } from './sides';
import { middleForms } from './slits';

type Hole = NonNullable<RectangleDraft['holes']>[number];
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

const holesOf = (panel: PanelDraft): readonly Hole[] => (isRectangle(panel) ? (panel.holes ?? []) : []);

const withHoles = (panel: PanelDraft, holes: readonly Hole[]): PanelDraft => {
  const { holes: _, ...rest } = panel as RectangleDraft;
  return holes.length === 0 ? rest : { ...rest, holes: [...holes] };
};

/** Cuts an opening into the middle of a flat rectangle. */
export const addHole =
  (place: Place, kind: HoleKind): Edit =>
  (draft) => {
    const panel = panelOf(draft, place);
    if (panel === undefined) return NO_SUCH_PANEL;
    if (!isRectangle(panel) || panel.bow !== undefined || panel.follows !== undefined)
      return refused(
        'no-room-for-hole',
        'An opening needs a flat panel with four square corners.',
        'Choose a wall, a floor or a lid.',
      );
    return taken(withPanel(draft, place, (each) => withHoles(each, [...holesOf(each), USUAL[kind]])));
  };

/** A length of an opening that can be set: margin, width or length, size up, and where its middle lies along the fold and out from it. */
export type HoleLength = 'margin' | 'across' | 'up' | 'along' | 'out';

export const setHole =
  (place: Place, at: number, length: HoleLength, text: string): Edit =>
  (draft) => {
    const panel = panelOf(draft, place);
    const hole = panel && holesOf(panel)[at];
    if (panel === undefined || hole === undefined) return NO_SUCH_PANEL;
    const fault = formFault(draft, text);
    if (fault) return fault;
    const form = text.trim();
    const changed = withLength(panel as RectangleDraft, hole, length, form);
    return taken(
      withPanel(draft, place, (each) =>
        withHoles(
          each,
          holesOf(each).map((other, nth) => (nth === at ? changed : other)),
        ),
      ),
    );
  };

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

/** Turns a slit to run across or up as the net lies. */
export const turnSlit =
  (place: Place, at: number, runs: 'across' | 'up'): Edit =>
  (draft) =>
    taken(
      withPanel(draft, place, (each) =>
        withHoles(
          each,
          holesOf(each).map((other, nth) =>
            nth === at && other.hole === 'slit' ? { ...other, runs } : other,
          ),
        ),
      ),
    );

export const removeHole =
  (place: Place, at: number): Edit =>
  (draft) =>
    taken(
      withPanel(draft, place, (each) =>
        withHoles(
          each,
          holesOf(each).filter((_, nth) => nth !== at),
        ),
      ),
    );

/** A half-round cut into the middle of a free edge, for a thumb; an empty length takes it out. */
export const setNotch = (place: Place, edge: Side, text: string = THUMB): Edit =>
  onPanel(place, (draft, panel, piece) => {
    if (!isSide(edge)) return NO_SUCH_PANEL;
    const hinge = hangsOn(panel);
    const where = `${place.panel}.${edge}`;
    const isBusy =
      hungOn(piece, place.panel, edge) !== undefined ||
      (hinge && isSide(hinge.edge) && OPPOSITE[hinge.edge] === edge) ||
      (piece.seams ?? []).some(([a, b]) => a === where || b === where);
    if (!isRectangle(panel) || panel.bow !== undefined || panel.follows !== undefined || isBusy)
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
