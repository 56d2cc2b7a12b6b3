import { savedName } from '../net/saved-panel';
import type { BoxNet } from '../net/types';
import type { Dressing } from '../rows/dressing';
import { pieceWith } from './panel-size';

/** A panel as it is saved. */
interface SavedPanel {
  readonly panel: string;
  readonly part?: string | undefined;
}

/**
 * The dressings of a box that becomes another: what lies on its right stays on the right, though some styles keep their sides under the names
 * they once had. A panel that the other box has not keeps its name, and the page says so.
 */
export const dressingsIn = (to: BoxNet, from: BoxNet, dressings: readonly Dressing[]): Dressing[] =>
  dressings.map((dressing) => ({
    ...dressing,
    pieces: dressing.pieces.map((piece) => {
      const { fit, placed } = piece;
      return {
        ...piece,
        ...(fit && 'panel' in fit && { fit: { ...fit, ...panelIn(to, from, fit) } }),
        ...(placed && { placed: { ...placed, ...panelIn(to, from, placed) } }),
      };
    }),
  }));

function panelIn(to: BoxNet, from: BoxNet, saved: SavedPanel): { panel: string; part?: string } {
  const { panel, part } = saved;
  const same = { panel, ...(part !== undefined && { part }) };
  const before = pieceWith(from, panel, part);
  if (before === undefined) return same;
  const seen = savedName(from, before.id, panel);
  const has = to.pieces.filter(({ faces }) => faces.some((face) => face.panel === seen));
  const after = has.find(({ id }) => id === before.id) ?? has[0];
  if (after === undefined) return same;
  return { panel: savedName(to, after.id, seen), ...(part !== undefined && { part: after.id }) };
}
