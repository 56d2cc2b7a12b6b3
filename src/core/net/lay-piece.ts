import type { Angle, EdgeName, JointSpec, PieceSpec } from '../styles/language/types';
import { ticks } from '../units/ticks';
import { arcRadius, finely } from './arc';
import { closingActs } from './closing-acts';
import type { Bench, LaidCurve, LaidPanel, Side } from './laid-panel';
import { layBent, layLens } from './lay-curved';
import { layLeaf, leafRing } from './lay-leaf';
import { layFlat } from './lay-panel';
import { edgesByFace, laySeam } from './lay-seam';
import { laySector } from './lay-sector';
import { lengthOf, type NamedValues } from './name-values';
import { onSameEdge, ringsOf, wasteOf } from './outline';
import { overlayEdges, type Stretch } from './overlay';
import { pointAt } from './point';
import { turnRings } from './ring-way';
import { rollUp } from './roll-way';
import { matchCorners } from './slanted-edge';
import type { Blank, Curve, Face, Hinge, Joint, NetEdge, PieceNet, Point } from './types';

/** What of a piece moves with its sizes. */
export interface PieceCorners {
  readonly blank: Blank;
  readonly faces: readonly Pick<Face, 'ring'>[];
}

/** One piece of card, flat: its panels laid beside one another along the tree, and everything that follows from where they lie. */
export function layPiece(id: string, spec: PieceSpec, values: NamedValues): PieceNet {
  const bench = layMatched(spec, values);
  const { left, right, low, high } = extentOf(bench);
  const moved = new Map<Point, Point>();
  const move = (p: Point): Point => {
    const known = moved.get(p);
    if (known !== undefined) return known;
    const there = pointAt(p.x - left, p.y - low);
    moved.set(p, there);
    return there;
  };
  const laid = bench.faces.map(({ panel, role, ring, curves, holes, slits = [] }) => ({
    panel,
    role,
    ring: ring.map(move),
    curves,
    holes: holes.map((hole) => ({ ring: hole.ring.map(move), curves: hole.curves })),
    slits: slits.map((slit) => ({ ring: slit.ring.map(move), curves: slit.curves })),
  }));
  const blank: Blank = { across: ticks(right - left), up: ticks(high - low) };
  const hinges = bench.hinges.map((hinge): Hinge => ({ ...hinge, a: move(hinge.a), b: move(hinge.b) }));
  const byPair = new Map(hinges.map(({ parent, child }, at) => [pairKey(parent, child), at]));
  const creases = creaseFolds(spec, bench, values);
  const edges = overlayEdges(laid).map((stretch) => nameEdge(stretch, laid, hinges, byPair, creases, blank));
  const faces = laid.map(
    ({ panel, role, ring, holes }, at): Face => ({
      name: faceName(bench, panel, at),
      panel,
      role,
      ring,
      holes: holes.map((hole) => hole.ring),
    }),
  );
  const joints = spec.joints.flatMap((joint) => layJoint(joint, bench, values));
  const rings = (spec.rings ?? []).map((panels) => leafRing(bench, panels));
  const acts = closingActs(spec, faces, hinges, joints, (angle) => angleOf(angle, values));
  const byFace = edgesByFace(edges, faces.length);
  const seams = (spec.seams ?? []).flatMap(([first, second, gap]) => {
    const sides = [first, second].map((where) =>
      sidesAt(bench, where).sides.map((side) => ({ face: side.face, a: move(side.a), b: move(side.b) })),
    );
    return laySeam(
      byFace,
      sides[0] ?? [],
      sides[1] ?? [],
      gap === undefined ? ticks(0) : lengthOf(gap, values),
    );
  });
  return {
    id,
    label: spec.label,
    ...(spec.lid ? { lid: true as const } : {}),
    blank,
    faces,
    hinges,
    curves: bench.curves.map((curve) => trueArc({ ...curve, a: move(curve.a), b: move(curve.b) })),
    joints,
    seams,
    edges,
    overlaps: [
      ...(spec.overlaps ?? []).map((group) => group.flatMap((panel) => facesOf(bench, panel))),
      ...rings.map(({ layers }) => layers.flat()),
    ],
    closing: rollUp(turnRings(acts, rings, hinges), overlapsOf(spec), hinges),
    ...(spec.threads && {
      threads: spec.threads.map(({ panel, long, tip }) => ({ panel, length: lengthOf(long, values), tip })),
    }),
    // after the seams, which may have split an edge
    waste: wasteOf(blank, ringsOf(edges.filter(({ right }) => right === null))),
    shell: spec.shell.flatMap((panel) => facesOf(bench, panel)),
    roomMm3: spec.roomMm3(values.mm),
  };
}

/** Panels laid, and the corners that meet at a seam made to match. */
function layMatched(spec: PieceSpec, values: NamedValues): Bench {
  const bench = layPanels(spec, values);
  for (const [first, second] of spec.seams ?? []) {
    const [one, other] = [first, second].map((where) => sidesAt(bench, where).sides);
    if (one?.[0] && other?.[0] && one.length + other.length === 2) matchCorners(bench, one[0], other[0]);
  }
  return bench;
}

/** Blank and corners of the piece as `layPiece` lays it, for whoever needs nothing else: a quarter of the work. */
export function layCorners(spec: PieceSpec, values: NamedValues): PieceCorners {
  const bench = layMatched(spec, values);
  const { left, right, low, high } = extentOf(bench);
  return {
    blank: { across: ticks(right - left), up: ticks(high - low) },
    faces: bench.faces.map(({ ring }) => ({ ring: ring.map(({ x, y }) => pointAt(x - left, y - low)) })),
  };
}

/** One edge of a panel by its name, where it lies on the blank; a curve is several, end to end. */
export interface NamedSide {
  readonly panel: string;
  readonly edge: EdgeName;
  /** The face it belongs to, as in `PieceNet.faces`. */
  readonly face: number;
  readonly a: Point;
  readonly b: Point;
}

/** Every edge of every panel of the piece as `layPiece` lays it, each as its panel's ring runs. */
export function namedSides(spec: PieceSpec, values: NamedValues): readonly NamedSide[] {
  const bench = layMatched(spec, values);
  const { left, low } = extentOf(bench);
  const move = ({ x, y }: Point): Point => pointAt(x - left, y - low);
  return [...bench.panels.values()].flatMap(({ name, sides }) =>
    [...sides].flatMap(([edge, of]) =>
      of.map(({ face, a, b }) => ({ panel: name, edge, face, a: move(a), b: move(b) })),
    ),
  );
}

/** How far the panels reach; a panel of no size leaves nothing to draw, at one point. */
function extentOf({ faces }: Bench) {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { ring } of faces)
    for (const { x, y } of ring) {
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < low) low = y;
      if (y > high) high = y;
    }
  return left <= right ? { left, right, low, high } : { left: 0, right: 0, low: 0, high: 0 };
}

/** Sectors that continue another beyond its last edge. */
const overlapsOf = ({ panels }: PieceSpec): ReadonlySet<string> =>
  new Set(
    Object.entries(panels).flatMap(([name, panel]) => ('sector' in panel && panel.follows ? [name] : [])),
  );

const angleOf = (angle: Angle, values: NamedValues): number =>
  typeof angle === 'number' ? angle : (values.anglesDeg[angle] ?? 0);

const facesOf = (bench: Bench, panel: string): readonly number[] => bench.panels.get(panel)?.faces ?? [];

function faceName(bench: Bench, panel: string, face: number): string {
  const faces = facesOf(bench, panel);
  return faces.length === 1 ? panel : `${panel}.${faces.indexOf(face) + 1}`;
}

function sidesAt(
  bench: Bench,
  where: string,
): { readonly panel: LaidPanel | undefined; readonly sides: readonly Side[] } {
  const [name = '', edge = ''] = where.split('.');
  const panel = bench.panels.get(name);
  return { panel, sides: panel?.sides.get(edge as EdgeName) ?? [] };
}

function layPanels(spec: PieceSpec, values: NamedValues): Bench {
  const bench: Bench = { faces: [], hinges: [], curves: [], bends: [], panels: new Map() };
  for (const [name, panel] of Object.entries(spec.panels)) {
    const foldDeg = angleOf(panel.fold ?? 0, values);
    const { panel: parent, sides } =
      panel.on === undefined ? { panel: undefined, sides: [] } : sidesAt(bench, panel.on);
    if (panel.on !== undefined && sides.length === 0) continue;
    const on = sides[0] ?? null;
    if ('leaf' in panel) {
      if (on !== null) layLeaf(bench, name, panel, on, foldDeg, values);
    } else if ('sector' in panel) laySector(bench, name, panel, on, angleOf(panel.turn, values), values);
    else if ('lens' in panel) {
      if (parent !== undefined) layLens(bench, name, panel, sides, parent, values);
    } else if ('size' in panel && (panel.bow !== undefined || panel.follows !== undefined))
      layBent(bench, name, panel, on, foldDeg, values);
    else layFlat(bench, name, panel, on, foldDeg, values);
  }
  return bench;
}

/** Fold of each declared crease and each bend off the tree, by the pair of faces it lies between. */
function creaseFolds(spec: PieceSpec, bench: Bench, values: NamedValues): ReadonlyMap<number, number> {
  const folds = new Map(bench.bends.map(({ one, other, restDeg }) => [pairKey(one, other), restDeg]));
  for (const { between, fold } of spec.creases ?? []) {
    const [p, q] = between.map((where) => sidesAt(bench, where).sides[0]?.face ?? -1);
    folds.set(pairKey(p ?? -1, q ?? -1), angleOf(fold, values));
  }
  return folds;
}

/** Two faces, in either order, as one number. */
const pairKey = (p: number, q: number): number => Math.min(p, q) * 65_536 + Math.max(p, q);

/** What a stretch of line is: a hinge, a declared crease, a slit between panels, a line within one, or the outline. */
function nameEdge(
  { a, b, left, right, curve }: Stretch,
  faces: Bench['faces'],
  hinges: readonly Hinge[],
  byPair: ReadonlyMap<number, number>,
  creases: ReadonlyMap<number, number>,
  blank: Blank,
): NetEdge {
  if (right === null) {
    const kind = onSameEdge(blank, a, b) ? 'edge' : 'cut';
    return { a, b, left, right, kind, foldDeg: 0, hinge: null, curve };
  }
  const key = pairKey(left, right);
  const hinge = byPair.get(key);
  const turning = hinges[hinge ?? -1];
  if (hinge !== undefined && turning !== undefined) {
    const { parent, kind, restDeg: foldDeg } = turning;
    return parent === left
      ? { a, b, left, right, kind, foldDeg, hinge, curve }
      : { a: b, b: a, left: right, right: left, kind, foldDeg, hinge, curve };
  }
  const crease = creases.get(key);
  // a panel that has itself on both sides is slit there
  const within = left !== right && faces[left]?.panel === faces[right]?.panel;
  const kind = within ? 'join' : crease !== undefined ? 'score' : 'slit';
  return { a, b, left, right, kind, foldDeg: crease ?? 0, hinge: null, curve };
}

/** A joint between panels; where both bend, strip on strip. */
function layJoint(joint: JointSpec, bench: Bench, values: NamedValues): Joint[] {
  if (joint.when !== undefined && lengthOf(joint.when, values) <= 0) return [];
  if (joint.unless !== undefined && lengthOf(joint.unless, values) > 0) return [];
  const targets = facesOf(bench, joint.onto);
  const gap = joint.gap === undefined ? ticks(0) : lengthOf(joint.gap, values);
  return facesOf(bench, joint.panel).flatMap((tab, strip) => {
    const target = targets[Math.min(strip, targets.length - 1)];
    return target === undefined
      ? []
      : [
          {
            tab,
            target,
            lap: joint.lap,
            carries: joint.carries ?? false,
            ...(joint.glueOnly && { glueOnly: true as const }),
            gap,
          },
        ];
  });
}

/** The arc behind a curve's chords. */
function trueArc({ a, b, rise, bulge, kind }: LaidCurve): Curve {
  const span = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const radius = arcRadius(span, rise);
  const back = (bulge === 'right' ? 1 : -1) * (radius - rise);
  const centre = [
    (a.x + b.x) / 2 - (back * (b.y - a.y)) / span,
    (a.y + b.y) / 2 + (back * (b.x - a.x)) / span,
  ] as const;
  return { a, b, centre: [finely(centre[0]), finely(centre[1])], radius: finely(radius), kind };
}
