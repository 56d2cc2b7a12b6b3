import type { PieceNet } from './types';

/**
 * A group of faces that lie on one another, layer by layer, innermost first. A layer is one face; where panels bend, one panel; in a ring of
 * leaves, which lists its faces part by part, first all lower sides, then all middles, then all upper sides.
 */
export function groupLayers({ faces }: PieceNet, group: readonly number[]): readonly (readonly number[])[] {
  const panelOf = (face: number | undefined) => faces[face ?? -1]?.panel;
  const panels = [...new Set(group.map(panelOf))];
  if (panels.length === group.length) return group.map((face) => [face]);
  if (panelOf(group[0]) === panelOf(group[1]))
    return panels.map((panel) => group.filter((face) => panelOf(face) === panel));
  const layers = group.length / panels.length;
  return Array.from({ length: layers }, (_, at) => group.slice(at * panels.length, (at + 1) * panels.length));
}
