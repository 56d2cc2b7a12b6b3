import type { PanelSpec } from '../styles/language/types';
import { toDegrees } from '../units/angles';
import { arcHeight, chordStations } from './arc';
import { frameOn } from './hinge-frame';
import type { Bench, LaidPanel, Side } from './laid-panel';
import { lengthOf, type NamedValues } from './name-values';
import type { Point } from './types';

type LeafSpec = Extract<PanelSpec, { readonly leaf: string }>;

/**
 * Lays a leaf of a ring on the parent edge `on`, as three faces: its middle, a triangle whose tip is half the hinge out; the side that goes under
 * one neighbor; and the side that goes over the other. Each side ends in its arc. Seen from inside with the hinge below, the side that goes under
 * is on the right.
 */
export function layLeaf(
  bench: Bench,
  name: string,
  { role, leaf }: LeafSpec,
  on: Side,
  restDeg: number,
  values: NamedValues,
): LaidPanel {
  const rise = lengthOf(leaf, values);
  const [start, end] = [on.a, on.b];
  const { length, place } = frameOn(start, end);
  const tip = place(length / 2, length / 2);
  const middle = bench.faces.length;
  const none = { curves: [null, null, null], holes: [] };
  bench.faces.push({ panel: name, role, ring: [end, start, tip], ...none });
  bench.hinges.push({
    parent: on.face,
    child: middle,
    a: start,
    b: end,
    restDeg: restDeg - on.leanDeg,
    kind: 'score',
    panel: name,
  });
  const around = [
    [start, tip],
    [tip, end],
  ] as const;
  const beside =
    rise > 0 ? around.map(([from, to]) => laySide(bench, { name, role, middle, from, to, rise })) : [];
  const sides = new Map([['e0' as const, [{ face: middle, a: end, b: start, leanDeg: 0 }]]]);
  const laid: LaidPanel = { name, role, faces: [middle, ...beside], sides, bend: null };
  bench.panels.set(name, laid);
  return laid;
}

/** The face between a slanted side of the middle, as its ring runs, and the arc beyond it. */
function laySide(
  bench: Bench,
  {
    name,
    role,
    middle,
    from,
    to,
    rise,
  }: Pick<LaidPanel, 'name' | 'role'> & {
    readonly middle: number;
    readonly from: Point;
    readonly to: Point;
    readonly rise: number;
  },
): number {
  const chord = frameOn(from, to);
  const arc = chordStations(chord.length, rise)
    .slice(1, -1)
    .map((along) => chord.place(along, arcHeight(chord.length, rise, along)));
  const curve = bench.curves.push({ a: from, b: to, rise, bulge: 'right', kind: 'cut' }) - 1;
  const curves = [null, curve, ...arc.map(() => curve)];
  const child = bench.faces.push({ panel: name, role, ring: [to, from, ...arc], curves, holes: [] }) - 1;
  bench.hinges.push({ parent: middle, child, a: from, b: to, restDeg: 0, kind: 'join', panel: name });
  return child;
}

/** A ring of leaves in the net: their lower sides, then middles, then upper sides; and the angle between arc and chord at the corners. */
export interface LeafRing {
  readonly panels: readonly string[];
  readonly layers: readonly (readonly number[])[];
  readonly chordDeg: number;
}

export function leafRing(bench: Bench, panels: readonly string[]): LeafRing {
  const faces = panels.map((name) => bench.panels.get(name)?.faces ?? []);
  const part = (at: number) => faces.flatMap((of) => of[at] ?? []);
  const steep = part(1).map((face) => {
    const { a, b, rise } = bench.curves[bench.faces[face]?.curves[1] ?? -1] ?? { rise: 0 };
    return a && b ? toDegrees(2 * Math.atan((2 * rise) / Math.hypot(b.x - a.x, b.y - a.y))) : 0;
  });
  return { panels, layers: [part(1), part(0), part(2)], chordDeg: Math.max(0, ...steep) };
}
