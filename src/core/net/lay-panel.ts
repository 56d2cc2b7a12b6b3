import { cutsOf, touchedBy } from '../styles/language/cut-edges';
import type { EdgeName } from '../styles/language/types';
import { cutShape } from './cut-shape';
import { frameOn } from './hinge-frame';
import type { Bench, LaidPanel, Side } from './laid-panel';
import { lengthOf, type NamedValues } from './name-values';
import { cutNotches, cutOpenings } from './openings';
import { cornersOf, type FlatSpec } from './panel-corners';
import { pointAt, samePoint } from './point';
import { addCorners } from './slanted-edge';

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
  const [hingeName = ''] = on === null ? [] : names;
  const cuts = cutsOf(spec).filter((cut) => !touchedBy(spec, cut).edges.includes(hingeName));
  const whole =
    cuts.length === 0 || ring.length < corners.length
      ? { ring, curves: ring.map(() => null) }
      : cutShape(bench, corners, names, sides, cuts, of);
  const notched = 'notches' in spec ? cutNotches(bench, whole, sides, spec.notches ?? [], of) : whole;
  const start = spec.at === undefined ? 0 : of(spec.at);
  const place = (along: number, out: number) =>
    on === null ? pointAt(along, out) : frameOn(on.a, on.b).place(start + along, out);
  const openings = cutOpenings(bench, ring, 'holes' in spec ? (spec.holes ?? []) : [], of, place);
  bench.faces.push({ panel: name, role: spec.role, ...notched, ...openings });
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
