import type { PieceDraft } from './draft';
import { axisOf, hangsOn, hungOn, isRectangle, isSide, OPPOSITE, rowOf, type Side } from './sides';

type Pair = readonly [string, string];

/** Every way two sides of a rectangle share a corner. */
const CORNERS: readonly (readonly [Side, Side])[] = [
  ['left', 'down'],
  ['right', 'down'],
  ['left', 'up'],
  ['right', 'up'],
];

/**
 * Edges that have to meet by how the panels hang, whether they do or not: walls of one height at a corner of their floor, and the ends of a
 * row that a tab closes. A gap there is then a fault that the checks name.
 */
export function cornerSeams(piece: PieceDraft): readonly Pair[] {
  const pairs: Pair[] = [];
  for (const [floor, { role }] of Object.entries(piece.panels)) {
    if (role !== 'base') continue;
    for (const [one, other] of CORNERS) {
      const [p, q] = [hungOn(piece, floor, one), hungOn(piece, floor, other)];
      if (p !== undefined && q !== undefined && areAlike(piece, [p, one], [q, other]))
        pairs.push([`${p}.${other}`, `${q}.${one}`]);
    }
  }
  for (const [, tab] of Object.entries(piece.panels)) {
    const hinge = hangsOn(tab);
    if (tab.role !== 'glueTab' || hinge === null || !isSide(hinge.edge) || axisOf(hinge.edge) !== 0) continue;
    const row = rowOf(piece, hinge.parent);
    const far = hinge.edge === 'right' ? row[0] : row.at(-1);
    if (far !== undefined && row.length > 2 && row.includes(hinge.parent))
      pairs.push([`${hinge.parent}.${hinge.edge}`, `${far}.${OPPOSITE[hinge.edge]}`]);
  }
  return pairs;
}

/** Walls that reach as far out as one another, whole edges, folded. */
function areAlike(piece: PieceDraft, ...walls: readonly (readonly [string, Side])[]): boolean {
  const reaches = walls.map(([name, side]) => {
    const panel = piece.panels[name];
    return isRectangle(panel) &&
      panel.role === 'wall' &&
      panel.taper === undefined &&
      panel.flush === undefined
      ? panel.size[axisOf(side)]
      : null;
  });
  return reaches[0] !== null && reaches.every((reach) => reach === reaches[0]);
}
