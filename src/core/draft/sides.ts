import type { EdgeName, Len } from '../styles/language/types';
import type { PanelDraft, PieceDraft, RectangleDraft } from './draft';

export type Side = 'left' | 'right' | 'up' | 'down';
/** In the order of the arrow keys. */
export const SIDES: readonly Side[] = ['left', 'right', 'up', 'down'];
export const OPPOSITE: Readonly<Record<Side, Side>> = {
  left: 'right',
  right: 'left',
  up: 'down',
  down: 'up',
};

/** One step towards a side, across and up as the net lies. */
export const DIRECTIONS: Readonly<Record<Side, readonly [across: number, up: number]>> = {
  left: [-1, 0],
  right: [1, 0],
  up: [0, 1],
  down: [0, -1],
};

export const isSide = (edge: string | undefined): edge is Side => SIDES.includes(edge as Side);
/** Which of a rectangle’s two sizes lies along this way: across (0) or up (1). */
export const axisOf = (side: Side): 0 | 1 => (side === 'left' || side === 'right' ? 0 : 1);
export const otherAxis = (axis: 0 | 1): 0 | 1 => (axis === 0 ? 1 : 0);

export const isRectangle = (panel: PanelDraft | undefined): panel is RectangleDraft =>
  panel !== undefined && 'size' in panel;

/** A rectangle that does not bend. */
export const isFlatRectangle = (panel: PanelDraft | undefined): panel is RectangleDraft =>
  isRectangle(panel) && panel.bow === undefined && panel.follows === undefined;

/** The panel and edge that a panel hangs on; null for the first. */
export function hangsOn(
  panel: PanelDraft | undefined,
): { readonly parent: string; readonly edge: EdgeName } | null {
  if (panel?.on === undefined) return null;
  const [parent = '', edge = ''] = panel.on.split('.');
  return { parent, edge: edge as EdgeName };
}

/** The panel that hangs on an edge. */
export const hungOn = (piece: PieceDraft, panel: string, edge: string): string | undefined =>
  Object.entries(piece.panels).find(([, { on }]) => on === `${panel}.${edge}`)?.[0];

/** How long an edge is, as a form; null where no form says it: slanted and curved edges. */
export function lengthOfEdge(panel: PanelDraft, edge: string): Len | null {
  if ('regular' in panel) return panel.side;
  if (!isFlatRectangle(panel) || !isSide(edge)) return null;
  const hinge = hangsOn(panel);
  const out = hinge && isSide(hinge.edge) ? hinge.edge : null;
  if (panel.taper !== undefined && out !== null && edge !== OPPOSITE[out]) return null;
  return panel.size[otherAxis(axisOf(edge))];
}

/** The panel on the other side of an edge, by whichever of the two hangs on the other. */
export function across(piece: PieceDraft, panel: string, side: Side): string | undefined {
  const hinge = hangsOn(piece.panels[panel]);
  if (hinge && hinge.edge === OPPOSITE[side]) return hinge.parent;
  return hungOn(piece, panel, side);
}

/** Walls that stand in one row with this one, from left to right. */
export function rowOf(piece: PieceDraft, panel: string): readonly string[] {
  const row = [panel];
  const isWall = (name: string | undefined): name is string =>
    name !== undefined && piece.panels[name]?.role === 'wall';
  for (
    let next = across(piece, panel, 'left');
    isWall(next) && !row.includes(next);
    next = across(piece, next, 'left')
  )
    row.unshift(next);
  for (
    let next = across(piece, panel, 'right');
    isWall(next) && !row.includes(next);
    next = across(piece, next, 'right')
  )
    row.push(next);
  return row;
}
