import type { At } from '../../plane';
import { standOf } from '../panel-way';
import { placeOf } from '../pose';
import { cross, dot } from '../vector';
import { type Figure, type PlacedFigure, showsInside } from './figure';
import { placeOfSeen, type Seen, see } from './view';
import { type Cover, visiblePieces } from './visible-lines';

/** The way something goes round a box: round the walls; over the top past the front; over the top past the sides. */
export type RoundWay = 'walls' | 'front' | 'sides';

/** What is put on a closed box, in the order it is put on; lengths in millimeters. */
export type Worn =
  /** Stuck on a panel: its outline as the panel lies in the flat net, inside up. */
  | {
      readonly kind: 'patch';
      readonly id: string;
      readonly part: string;
      readonly panel: string;
      readonly outline: readonly At[];
    }
  /** A band of card, or a ribbon, in the middle of what it goes round. */
  | {
      readonly kind: 'strip';
      readonly id: string;
      readonly of: 'card' | 'ribbon';
      readonly way: RoundWay;
      readonly widthMm: number;
    }
  | {
      readonly kind: 'bow';
      readonly id: string;
      readonly on: 'top' | 'front';
      readonly loops: number;
      readonly loopMm: number;
      readonly tailMm: number;
      readonly widthMm: number;
    };

/** Part of it on one face, as it is seen: what it covers, and those of its edges that show. */
export interface WornArea {
  readonly id: string;
  readonly of: 'card' | 'ribbon';
  /** The face it lies on; null in front of everything. */
  readonly face: number | null;
  readonly ring: readonly At[];
  readonly edges: readonly (readonly [At, At])[];
}

/** What is put on one piece of a box, as it is seen, in the order it is put on. `covers`: the faces on paper, from `putOnPaper`. */
export function seeWorn(
  figure: Figure,
  worn: readonly Worn[],
  onPaper: (point: At) => At,
  covers: readonly Cover[],
  wears: Wears,
): readonly WornArea[] {
  const axes = axesOf(figure);
  const own = worn.filter((each) => each.kind === 'patch' || wears[sideOf(each)]);
  const onFaces = own.flatMap((each) => areasOf(figure, axes, each, onPaper));
  const rank = new Map(figure.order.map((face, at) => [face, at]));
  const seen = onFaces.map(({ lines, ...area }, at): WornArea => {
    const face = area.face;
    const nearer = figure.order.slice(rank.get(face)! + 1).map((other) => covers[other]!);
    const later = onFaces.slice(at + 1).flatMap((next) => (next.face === face ? [{ ring: next.ring, holes: [] }] : [])); // biome-ignore format: one row
    const side = { figure: covers[face]!, covers: [...nearer, ...later] };
    return { ...area, edges: lines.flatMap(([from, to]) => visiblePieces(from, to, [side])) };
  });
  const bows = own.flatMap((each) => (each.kind === 'bow' ? bowOf(figure, axes, each, onPaper) : []));
  return [...seen, ...bows];
}

/** Which part of what goes round a box one of its pieces shows. */
export interface Wears {
  readonly walls: boolean;
  readonly over: boolean;
  readonly top: boolean;
}

/** A bow on top sits on the outermost piece; what goes over the top passes them all; what goes round the walls goes round the outermost, unless that is a shallow lid. */
export function wearersOf(placed: readonly PlacedFigure[]): readonly Wears[] {
  const heights = placed.map(({ figure }) => {
    const { up } = axesOf(figure);
    const along = figure.faces.flatMap(({ ring }) => ring.map((point) => dot(point, up)));
    return Math.max(...along) - Math.min(...along);
  });
  const last = placed.length - 1;
  const round = (heights[last] ?? 0) >= SHALLOW * (heights[0] ?? 0) ? last : 0;
  return placed.map((_, at) => ({ walls: at === round, over: true, top: at === last }));
}

/** A lid less deep than this share of its box leaves room for a band below it. source: our own choice */
const SHALLOW = 0.6;

const sideOf = (worn: Exclude<Worn, { kind: 'patch' }>): keyof Wears => {
  if (worn.kind === 'bow') return worn.on === 'top' ? 'top' : 'walls';
  return worn.way === 'walls' ? 'walls' : 'over';
};

interface Axes {
  readonly across: Seen;
  readonly front: Seen;
  readonly up: Seen;
}

/** The ways of the standing piece, as the eye has them. */
function axesOf({ piece, faces, view }: Figure): Axes {
  const { up, front } = standOf(
    piece,
    faces.map(({ pose }) => pose),
  );
  return { up: see(view, up), front: see(view, front), across: see(view, cross(front, up)) };
}

interface FaceArea extends Omit<WornArea, 'edges' | 'face'> {
  readonly face: number;
  readonly lines: readonly (readonly [At, At])[];
}

function areasOf(figure: Figure, axes: Axes, worn: Worn, onPaper: (point: At) => At): readonly FaceArea[] {
  if (worn.kind === 'bow') return [];
  const { piece, faces, view } = figure;
  const paper = (point: Seen): At => onPaper(placeOfSeen(point));
  if (worn.kind === 'patch') {
    const face = piece.faces.findIndex(({ panel }) => panel === worn.panel);
    if (piece.id !== worn.part || face < 0 || showsInside(figure, face)) return [];
    const ring = worn.outline.map(([x, y]) => paper(see(view, placeOf(faces[face]!.pose, x, y))));
    return [{ id: worn.id, of: 'card', face, ring, lines: sidesOf(ring) }];
  }
  const { axis, from, to } = slabOf(figure, axes, worn.way, worn.widthMm);
  return figure.order.flatMap((face): FaceArea[] => {
    if (showsInside(figure, face) || isAcross(figure, face, axis)) return [];
    const cut = clipToSlab(faces[face]!.ring, axis, from, to);
    if (cut.length < 3) return [];
    const ends = (point: Seen) => [from, to].find((at) => Math.abs(dot(point, axis) - at) < ON_EDGE_MM);
    const lines = sidesOf(cut)
      .filter(([a, b]) => ends(a) !== undefined && ends(a) === ends(b))
      .map(([a, b]): readonly [At, At] => [paper(a), paper(b)]);
    return [{ id: worn.id, of: worn.of, face, ring: cut.map(paper), lines }];
  });
}

const ON_EDGE_MM = 0.01;

const sidesOf = <Point>(ring: readonly Point[]): readonly (readonly [Point, Point])[] =>
  ring.map((point, at) => [point, ring[(at + 1) % ring.length]!]);

/** The space between two parallel planes that a strip lies in. */
function slabOf(figure: Figure, axes: Axes, way: RoundWay, widthMm: number) {
  const axis = way === 'walls' ? axes.up : way === 'front' ? axes.across : axes.front;
  const round = way === 'walls' ? wallsOf(figure, axes) : figure.faces.map((_, at) => at);
  const along = round.flatMap((face) => figure.faces[face]!.ring.map((point) => dot(point, axis)));
  const middle = (Math.min(...along) + Math.max(...along)) / 2;
  return { axis, from: middle - widthMm / 2, to: middle + widthMm / 2 };
}

/** The upright walls; every face where there are none. */
function wallsOf({ piece, faces, view }: Figure, { up }: Axes): readonly number[] {
  const walls = piece.faces.flatMap(({ role }, at) => {
    const { pose } = faces[at]!;
    const leans = dot(see(view, [pose[2], pose[6], pose[10]]), up);
    return role === 'wall' && Math.abs(leans) < UPRIGHT ? [at] : [];
  });
  return walls.length > 0 ? walls : faces.map((_, at) => at);
}

const UPRIGHT = 0.3;

/** A face that a strip passes by on its edge. */
function isAcross({ faces, view }: Figure, face: number, axis: Seen): boolean {
  const { pose } = faces[face]!;
  return Math.abs(dot(see(view, [pose[2], pose[6], pose[10]]), axis)) > 0.95;
}

/** The part of a ring between two parallel planes (Sutherland and Hodgman, 1974). */
function clipToSlab(ring: readonly Seen[], axis: Seen, from: number, to: number): readonly Seen[] {
  const keep = (points: readonly Seen[], off: (point: Seen) => number): readonly Seen[] =>
    sidesOf(points).flatMap(([a, b]): Seen[] => {
      const [here, next] = [off(a), off(b)];
      const share = here / (here - next);
      const crossing: Seen = [
        a[0] + share * (b[0] - a[0]),
        a[1] + share * (b[1] - a[1]),
        a[2] + share * (b[2] - a[2]),
      ];
      if (here >= 0) return next >= 0 ? [b] : [crossing];
      return next >= 0 ? [crossing, b] : [];
    });
  const above = keep(ring, (point) => dot(point, axis) - from);
  return keep(above, (point) => to - dot(point, axis));
}

type Bow = Extract<Worn, { kind: 'bow' }>;

/** Where a bow sits: in the middle of the top, or of the front; as the eye has it. */
function seatOf({ faces }: Figure, { across, front, up }: Axes, { on }: Bow): Seen {
  const all = faces.flatMap(({ ring }) => ring);
  const middle = (axis: Seen) => {
    const along = all.map((point) => dot(point, axis));
    return (Math.min(...along) + Math.max(...along)) / 2;
  };
  const most = (axis: Seen) => Math.max(...all.map((point) => dot(point, axis)));
  const [x, y, z] =
    on === 'top' ? [middle(across), middle(front), most(up)] : [middle(across), most(front), middle(up)];
  const at = (i: 0 | 1 | 2) => x * across[i] + y * front[i] + z * up[i];
  return [at(0), at(1), at(2)];
}

const PETAL_STEPS = 10;

/** A bow facing the eye: two loops, a knot, two tails. Further loops lie behind the first two. */
function bowOf(figure: Figure, axes: Axes, bow: Bow, onPaper: (point: At) => At): readonly WornArea[] {
  const [x, y] = seatOf(figure, axes, bow);
  const paper = ([dx, dy]: At): At => onPaper([x + dx, y + dy]);
  const area = (ring: readonly At[]): WornArea => {
    const set = ring.map(paper);
    return { id: bow.id, of: 'ribbon', face: null, ring: set, edges: sidesOf(set) };
  };
  const petal = (sign: 1 | -1, tilt: number): At[] =>
    Array.from({ length: 2 * PETAL_STEPS + 1 }, (_, step): At => {
      const turn = ((step - PETAL_STEPS) / PETAL_STEPS) * (Math.PI / 4);
      const reach = bow.loopMm * Math.cos(2 * turn);
      return [sign * reach * Math.cos(turn + tilt), reach * Math.sin(turn + tilt)];
    });
  const half = bow.widthMm / 2;
  const tail = (sign: 1 | -1): At[] => {
    const [ex, ey] = [sign * 0.45 * bow.tailMm, -0.85 * bow.tailMm];
    return [
      [-half * 0.6, 0],
      [half * 0.6, 0],
      [ex + half, ey],
      [ex, ey + half],
      [ex - half, ey],
    ];
  };
  const knot = Array.from({ length: 8 }, (_, at): At => {
    const turn = ((at + 0.5) * Math.PI) / 4;
    return [0.8 * bow.widthMm * Math.cos(turn), 0.8 * bow.widthMm * Math.sin(turn)];
  });
  const pairs = Math.max(0, Math.min(3, Math.round(bow.loops / 2)));
  const loops = Array.from({ length: pairs }, (_, at) => 0.25 + 0.4 * (pairs - 1 - at));
  return [
    ...(bow.tailMm > 0 ? [area(tail(-1)), area(tail(1))] : []),
    ...loops.flatMap((tilt) => [area(petal(-1, tilt)), area(petal(1, tilt))]),
    area(knot),
  ];
}
