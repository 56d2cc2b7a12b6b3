import type { CutSpec, PanelSpec } from './types';

const OPPOSITE: Readonly<Record<string, string>> = { left: 'right', right: 'left', up: 'down', down: 'up' };

/** The edges a panel has by name, counter-clockwise: four sides, or e0, e1, … round an outline. */
export function edgesOf(spec: PanelSpec): readonly string[] {
  if ('leaf' in spec) return ['e0'];
  if ('sector' in spec) return ['e0', 'e1', 'e2'];
  if ('size' in spec || 'lens' in spec) return ['down', 'right', 'up', 'left'];
  const corners = 'regular' in spec ? spec.regular : spec.outline.length + (spec.on === undefined ? 0 : 2);
  return Array.from({ length: corners }, (_, at) => `e${at}`);
}

/** The edge a panel hangs by; undefined for the first panel, and where only its net says which of its sides that is. */
export function hingeOf(spec: PanelSpec): string | undefined {
  if (spec.on === undefined) return undefined;
  return 'size' in spec || 'lens' in spec ? OPPOSITE[spec.on.split('.')[1] ?? ''] : 'e0';
}

export const cutsOf = (spec: PanelSpec): readonly CutSpec[] => ('cuts' in spec ? (spec.cuts ?? []) : []);

/** Edges that a cut makes shorter or bends, and the corners that it changes or needs as they are, each by the edge that begins there; none where the panel has no such edge. */
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
