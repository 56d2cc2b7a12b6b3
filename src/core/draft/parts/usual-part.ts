import type { Role } from '../../styles/language/types';
import type { PieceDraft } from '../draft';
import { axisOf, hangsOn, isSide, rowOf } from '../sides';

/** What is added most at an edge like this one: walls round a floor, a fourth wall and then a tab in a row, flaps below it, a lid above. Null where nothing is usual. */
export function usualPart(piece: PieceDraft, panel: string, edge: string): Role | null {
  const spec = piece.panels[panel];
  if (spec === undefined || !isSide(edge)) return null;
  const hinge = hangsOn(spec);
  const side = hinge && isSide(hinge.edge) ? hinge.edge : null;
  if (spec.role === 'base') return 'wall';
  if (spec.role === 'lid') return side === edge ? 'tuck' : 'dustFlap';
  if (spec.role !== 'wall') return null;
  const floor = hinge && piece.panels[hinge.parent]?.role === 'base';
  if (floor && side !== null) return edge === side ? 'lid' : axisOf(edge) === axisOf(side) ? null : 'glueTab';
  if (axisOf(edge) === 0) return rowOf(piece, panel).length < 4 ? 'wall' : 'glueTab';
  return edge === 'down' ? 'bottomFlap' : 'lid';
}
