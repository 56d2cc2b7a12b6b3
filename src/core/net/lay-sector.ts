import type { EdgeName, PanelSpec } from '../styles/language/types';
import { toDegrees, toRadians } from '../units/angles';
import { TICKS_PER_MM, ticks } from '../units/ticks';
import { CHORD_TOLERANCE_MM } from './arc';
import type { Bench, LaidFace, LaidPanel, Roll, Side } from './laid-panel';
import { lengthOf, type NamedValues } from './name-values';
import { pointAt } from './point';
import type { Point } from './types';

type SectorSpec = Extract<PanelSpec, { readonly sector: string }>;

/**
 * The roll of a sector that closes on itself. It has as many facets as the chord tolerance asks for at the cone’s mouth, whose radius is
 * slant × angle / 360. They are the sides of a regular pyramid, and fold against one another as its sides do. The limits of a style stop sizes
 * that can’t roll; until then a sector of no size is drawn flat and narrow, and one of more than a full turn as a full turn.
 */
function rollOf(slantMm: number, sectorDeg: number): Roll {
  if (slantMm <= 0 || sectorDeg <= 0) return { facetDeg: 1, bendDeg: 0, facets: 12 };
  const angleDeg = Math.min(sectorDeg, 360);
  const mouth = (slantMm * angleDeg) / 360;
  const facets = Math.max(12, Math.ceil(Math.PI / Math.acos(1 - Math.min(1, CHORD_TOLERANCE_MM / mouth))));
  const turn = Math.PI / facets;
  const lean = Math.tan(toRadians(angleDeg / facets / 2)) / Math.tan(turn);
  const bendDeg = toDegrees(Math.acos((1 - lean ** 2) * Math.cos(2 * turn) + lean ** 2));
  return { facetDeg: angleDeg / facets, bendDeg, facets };
}

/** A last facet narrower than this at the mouth is joined to the one before it. source: our choice, ticks; 1/20 mm */
const NARROWEST = 16;

/** Where the facets of a sector end, degrees from its first edge: equal ones, at most a full turn of them, and what is left over as the last. */
function facetEnds(roll: Roll, angleDeg: number, slant: number, whole: boolean): readonly number[] {
  if (whole) return Array.from({ length: roll.facets }, (_, at) => roll.facetDeg * (at + 1));
  const before = angleDeg - toDegrees(NARROWEST / slant);
  const ends = Array.from({ length: roll.facets }, (_, at) => roll.facetDeg * (at + 1));
  return [...ends.filter((end) => end < before), angleDeg];
}

/**
 * Lays a sector that is rolled into a cone, as facets that all meet at the tip. The first panel of a piece has its tip at the lower left and its
 * first edge level. A sector that `follows` another is the overlap: it continues that one beyond its last edge, and ends up inside its beginning.
 */
export function laySector(
  bench: Bench,
  name: string,
  spec: SectorSpec,
  on: Side | null,
  angleDeg: number,
  values: NamedValues,
): LaidPanel {
  const slant = lengthOf(spec.sector, values);
  const known = spec.follows === undefined ? undefined : bench.panels.get(spec.follows)?.roll;
  const roll = known ?? rollOf(slant / TICKS_PER_MM, angleDeg);
  const tip = on === null ? pointAt(0, 0) : on.b;
  const first = on === null ? pointAt(slant, 0) : on.a;
  const start = Math.atan2(first.y - tip.y, first.x - tip.x);
  const rim = [
    first,
    ...facetEnds(roll, angleDeg, slant, known === undefined).map((deg): Point => {
      const way = start + toRadians(deg);
      // the last edge of the overlap ends on the chord of the facet beneath it
      const off = toRadians((deg % roll.facetDeg) - roll.facetDeg / 2);
      const isLeft = known !== undefined && deg === angleDeg;
      const long = isLeft ? (slant * Math.cos(toRadians(roll.facetDeg / 2))) / Math.cos(off) : slant;
      return pointAt(tip.x + long * Math.cos(way), tip.y + long * Math.sin(way));
    }),
  ];
  const last = rim.at(-1) ?? first;
  const rise = ticks(Math.round(slant * (1 - Math.cos(toRadians(angleDeg / 2)))));
  const curve = bench.curves.push({ a: first, b: last, rise, bulge: 'right', kind: 'cut' }) - 1;
  const faces = rim.slice(1).map((to, at) => {
    const from = rim[at] ?? first;
    const ring = [tip, from, to];
    const face: LaidFace = { panel: name, role: spec.role, ring, curves: [null, curve, null], holes: [] };
    const child = bench.faces.push(face) - 1;
    const parent = at === 0 ? on?.face : child - 1;
    if (parent !== undefined)
      bench.hinges.push({ parent, child, a: from, b: tip, restDeg: roll.bendDeg, kind: 'join', panel: name });
    return child;
  });
  const side = (at: number, a: Point, b: Point): Side => ({ face: faces.at(at) ?? 0, a, b, leanDeg: 0 });
  const sides = new Map<EdgeName, readonly Side[]>([
    ['e0', [side(0, tip, first)]],
    ['e1', rim.slice(1).map((to, at) => side(at, rim[at] ?? first, to))],
    ['e2', [side(-1, last, tip)]],
  ]);
  const laid: LaidPanel = { name, role: spec.role, faces, sides, bend: null, roll };
  bench.panels.set(name, laid);
  return laid;
}
