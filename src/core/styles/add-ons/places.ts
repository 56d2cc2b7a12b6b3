import type { AddOnPlace } from '../language/types';

/** `topLid` as a maker says it: top lid. */
const words = (name: string): string => name.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

/** An id that a saved recipe may hold: lower case and dashes. */
const idOf = (name: string): string => words(name).replace(/[^a-z0-9]+/g, '-');

/** One place a panel. */
export const inPanels = (piece: string, ...panels: readonly string[]): readonly AddOnPlace[] =>
  panels.map((panel) => ({ id: idOf(panel), label: `In the ${words(panel)}`, piece, at: [panel] }));

/** One place a lid that hangs on the back: from the front it is seen head down. */
export const inLids = (piece: string, ...panels: readonly string[]): readonly AddOnPlace[] =>
  inPanels(piece, ...panels).map((place) => ({ ...place, headDown: true }));

/** One place an edge (`'front.up'`), called by its panel. */
export const inEdges = (piece: string, ...edges: readonly `${string}.${string}`[]): readonly AddOnPlace[] =>
  edges.map((edge) => {
    const panel = edge.split('.')[0] ?? edge;
    return { id: idOf(panel), label: `On the ${words(panel)}`, piece, at: [edge] };
  });
