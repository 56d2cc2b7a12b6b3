import type { CreaseSpec, Len, PanelSpec } from '../language/types';

/**
 * Every corner, where it lies from the base, and the edges its two webs hang on. A wall's first edge runs from the base up to the rim, its third
 * from the rim down; both webs end in one point, as far to the side of the corner as beyond it.
 */
export const CORNERS = [
  { long: 'front', end: 'right', across: 1, up: -1, longEdge: 'e3', endEdge: 'e1' },
  { long: 'back', end: 'right', across: 1, up: 1, longEdge: 'e1', endEdge: 'e3' },
  { long: 'back', end: 'left', across: -1, up: 1, longEdge: 'e3', endEdge: 'e1' },
  { long: 'front', end: 'left', across: -1, up: -1, longEdge: 'e1', endEdge: 'e3' },
] as const;
type Corner = (typeof CORNERS)[number];
const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
export const outerOf = ({ long, end }: Corner): string => `${long}${capital(end)}Web`;
export const innerOf = ({ long, end }: Corner): string => `${end}${capital(long)}Web`;

/** How far the webs' point lies from where a hinge starts that is `from` off the corner. */
const reach = (way: 1 | -1, from: Len): Len => (way > 0 ? `webReach - ${from}` : `${from} - webReach`);

/** The eight webs of a pail, two at each corner. */
export function webs(): Record<string, PanelSpec> {
  const panels: Record<string, PanelSpec> = {};
  for (const corner of CORNERS) {
    const { long, end, across, up, longEdge, endEdge } = corner;
    const asLies = true as const;
    const tip = (edge: 'e1' | 'e3', off: readonly [Len, Len]) =>
      edge === 'e1'
        ? ([[reach(across, '0'), reach(up, '0')]] as const)
        : ([[reach(across, off[0]), reach(up, off[1])]] as const);
    panels[innerOf(corner)] = {
      role: 'gusset',
      outline: tip(endEdge, ['slant', 'flare']),
      asLies,
      on: `${end}.${endEdge}`,
      fold: -180,
    };
    panels[outerOf(corner)] = {
      role: 'gusset',
      outline: tip(longEdge, ['flare', 'slant']),
      asLies,
      on: `${long}.${longEdge}`,
      fold: 'endWebFold',
    };
  }
  return panels;
}

export const CREASES: readonly CreaseSpec[] = CORNERS.map((corner) => {
  const crease = (panel: string, edge: 'e1' | 'e3') => `${panel}.${edge === 'e1' ? 'e1' : 'e2'}` as const;
  return {
    between: [crease(innerOf(corner), corner.endEdge), crease(outerOf(corner), corner.longEdge)],
    fold: 180,
  };
});
