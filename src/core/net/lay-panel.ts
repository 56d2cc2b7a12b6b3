import type { EdgeName, PanelSpec } from '../styles/language/types';
import { cutShape, offHinge } from './cut-shape';
import { frameOn } from './hinge-frame';
import type { Bench, LaidPanel, Side } from './laid-panel';
import { lengthOf, type NamedValues } from './name-values';
import { cutHoles, cutNotches, cutSlits } from './openings';
import { cornersOf } from './panel-corners';
import { pointAt, samePoint } from './point';
import { addCorners } from './slanted-edge';

type FlatSpec = Exclude<
  PanelSpec,
  { readonly lens: string } | { readonly leaf: string } | { readonly sector: string }
>;

/** Lays a flat panel beside the parent edge `on` (or as the root) and hinges it there. `restDeg` is its fold when closed. */
export function layFlat(
  bench: Bench,
  name: string,
  spec: FlatSpec,
  on: Side | null,
  restDeg: number,
  values: NamedValues,
): LaidPanel {
  const { corners, names, hinge } = cornersOf(spec, on, (text) => lengthOf(text, values));
  const face = bench.faces.length;
  const sides = new Map<EdgeName, readonly Side[]>();
  corners.forEach((a, corner) => {
    const b = corners[(corner + 1) % corners.length] ?? a;
    sides.set(names[corner] ?? 'e0', samePoint(a, b) ? [] : [{ face, a, b, leanDeg: 0 }]);
  });
  const ring = corners.filter(
    (point, corner) => !samePoint(point, corners[(corner + 1) % corners.length] ?? point),
  );
  const of = (text: string) => lengthOf(text, values);
  const cuts = 'cuts' in spec ? (spec.cuts ?? []) : [];
  const whole =
    cuts.length === 0 || ring.length < corners.length
      ? { ring, curves: ring.map(() => null) }
      : cutShape(bench, corners, names, sides, hinge === null ? cuts : offHinge(cuts, names), of);
  const notched = 'notches' in spec ? cutNotches(bench, whole, sides, spec.notches ?? [], of) : whole;
  const start = spec.at === undefined ? 0 : of(spec.at);
  const place = (along: number, out: number) =>
    on === null ? pointAt(along, out) : frameOn(on.a, on.b).place(start + along, out);
  const cut = 'holes' in spec ? (spec.holes ?? []) : [];
  const holes = cutHoles(bench, ring, cut, of, place);
  const slits = cutSlits(ring, cut, of, place);
  bench.faces.push({ panel: name, role: spec.role, ...notched, holes, slits });
  if (on !== null && hinge !== null) {
    addCorners(bench, on, hinge);
    bench.hinges.push({
      parent: on.face,
      child: face,
      a: hinge[0],
      b: hinge[1],
      restDeg: restDeg - on.leanDeg,
      kind: spec.flush ? 'join' : 'score',
      panel: name,
    });
  }
  const laid: LaidPanel = { name, role: spec.role, faces: [face], sides, bend: null };
  bench.panels.set(name, laid);
  return laid;
}
