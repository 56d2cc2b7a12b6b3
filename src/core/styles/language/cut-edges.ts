import type { CutSpec, PanelSpec, PieceSpec } from './types';

export const OPPOSITE: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  up: 'down',
  down: 'up',
};

/** The edges a panel has by name, counter-clockwise: four sides, or e0, e1, … round an outline. */
export function edgesOf(spec: PanelSpec): readonly string[] {
  if ('leaf' in spec) return ['e0'];
  if ('sector' in spec) return ['e0', 'e1', 'e2'];
  if ('size' in spec || 'lens' in spec) return ['down', 'right', 'up', 'left'];
  const corners = 'regular' in spec ? spec.regular : spec.outline.length + (spec.on === undefined ? 0 : 2);
  return Array.from({ length: corners }, (_, at) => `e${at}`);
}

/** The edge a panel hangs by; undefined for the first panel, and for a rectangle on a slanted edge, where only the net tells. */
export function hingeOf(spec: PanelSpec): string | undefined {
  if (spec.on === undefined) return undefined;
  return 'size' in spec || 'lens' in spec ? OPPOSITE[spec.on.split('.')[1] ?? ''] : 'e0';
}

export const cutsOf = (spec: PanelSpec): readonly CutSpec[] => ('cuts' in spec ? (spec.cuts ?? []) : []);

/**
 * Edges that a cut shortens or bends, and corners that no other cut may change, each named by the edge that begins there. None where the panel
 * has no such edge.
 */
export function touchedBy(
  spec: PanelSpec,
  { at, cut }: Pick<CutSpec, 'at' | 'cut'>,
): { readonly edges: readonly string[]; readonly corners: readonly string[] } {
  const names = edgesOf(spec);
  const edge = names.indexOf(at);
  if (edge < 0) return { edges: [], corners: [] };
  const before = names.at(edge - 1) ?? at;
  const after = names[(edge + 1) % names.length] ?? at;
  if (cut === 'scoop') return { edges: [at], corners: [at, after] };
  return cut === 'arch'
    ? { edges: [before, at, after], corners: [at, after] }
    : { edges: [before, at], corners: [at] };
}

/** A piece of a style, or of one that is being drawn. */
type PieceEdges = Pick<PieceSpec, 'panels' | 'seams' | 'creases'>;

/** Edges that something hangs on, or that close as a seam, as `panel.edge`. */
export const busyEdges = ({ panels, seams = [], creases = [] }: PieceEdges): ReadonlySet<string> =>
  new Set<string>([
    ...Object.values(panels).flatMap(({ on }) => on ?? []),
    ...seams.flatMap(([a, b]) => [a, b]),
    ...creases.flatMap(({ between }) => between),
  ]);

/** What is wrong with the cuts of a panel, here called `name`: they need free edges, and no two of them may meet. Null where nothing is. */
export function cutFault(piece: PieceEdges, name: string, panel: PanelSpec): string | null {
  const busy = busyEdges(piece);
  const used = new Set<string>();
  for (const cut of cutsOf(panel)) {
    const { edges, corners } = touchedBy(panel, cut);
    if (edges.length === 0) return `no edge ${cut.at} to cut`;
    const taken = edges.find((edge) => busy.has(`${name}.${edge}`) || edge === hingeOf(panel));
    if (taken !== undefined) return `a cut at ${taken}, which carries a panel or meets another`;
    if (corners.some((corner) => used.has(corner))) return `two cuts meet at ${cut.at}`;
    for (const corner of corners) used.add(corner);
    if ('notches' in panel && corners.length > 1 && panel.notches.some(({ edge }) => edge === cut.at))
      return `a notch in ${cut.at}, which is curved`;
  }
  return null;
}
