import type { Len, Role } from '../../styles/language/types';
import type { Draft, PanelDraft, PieceDraft } from '../draft';
import { namesIn } from '../forms';
import { across, axisOf, hangsOn, isRectangle, isSide, otherAxis, type Side } from '../sides';

/** An edge of a rectangle that a part is to hang on. */
export interface Spot {
  readonly piece: string;
  readonly parent: string;
  readonly side: Side;
  /** Length of the edge. */
  readonly hinge: Len;
}

export type Part = readonly [draft: Draft, panel: PanelDraft];
export type Build = (draft: Draft, spot: Spot) => Part;

export const pieceAt = (draft: Draft, { piece }: Spot): PieceDraft => draft.pieces?.[piece] as PieceDraft;

/** Both sizes of a rectangle on this edge: along the hinge, and out from it. */
export const sized = (side: Side, along: Len, out: Len): [Len, Len] =>
  axisOf(side) === 0 ? [out, along] : [along, out];

export const on = ({ parent, side }: Spot) => `${parent}.${side}` as `${string}.left`;

export const extent = (panel: PanelDraft | undefined, axis: 0 | 1): Len | null =>
  isRectangle(panel) ? panel.size[axis] : null;

/** How far a panel on this edge would reach out if it were as the panels round it: what lies straight behind, else beside, else a size not used yet. */
export function usualReach(draft: Draft, spot: Spot): Len {
  const piece = pieceAt(draft, spot);
  const axis = axisOf(spot.side);
  const parent = piece.panels[spot.parent];
  const hinge = hangsOn(parent);
  const behind = hinge && isSide(hinge.edge) ? piece.panels[hinge.parent] : undefined;
  if (hinge && isSide(hinge.edge)) {
    const reach = extent(behind, axisOf(hinge.edge) === axis ? axis : otherAxis(axis));
    if (reach !== null) return reach;
  }
  const beside = besideOf(piece, spot);
  if (beside !== null && axis === 1) return beside;
  const used = isRectangle(parent) ? new Set(parent.size.flatMap((form) => [...namesIn(form)])) : new Set();
  const unused = Object.entries(draft.symbols).find(([name, { role }]) => role === 'size' && !used.has(name));
  return unused?.[0] ?? spot.hinge;
}

/** How far apart the walls beside a wall stand: the width of one of its neighbors in the row. */
export function besideOf(piece: PieceDraft, { parent, side }: Spot): Len | null {
  const ways: readonly Side[] = axisOf(side) === 1 ? ['left', 'right'] : ['up', 'down'];
  for (const way of ways) {
    const next = across(piece, parent, way);
    const panel = next === undefined ? undefined : piece.panels[next];
    if (panel?.role === 'wall') return extent(panel, axisOf(way));
  }
  return null;
}

/** Of a role that is not made in a way of its own: as long as the edge, reaching as far as what is behind it, folded square. */
export const plainPart =
  (role: Role): Build =>
  (draft, spot) => [
    draft,
    { role, on: on(spot), size: sized(spot.side, spot.hinge, usualReach(draft, spot)), fold: 90 },
  ];
