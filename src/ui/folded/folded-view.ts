import {
  anglesDuring,
  closingStates,
  dot,
  type FoldedFace,
  foldPiece,
  insideOf,
  type Pose,
  placeOf,
  restAngles,
  type Vector,
} from '../../core/fold';
import { layersOf } from '../../core/fold/solid-figure';
import { asItStands, type BoxNet, type PieceNet } from '../../core/net';
import { toMm } from '../../core/units';
import { type Camera, onPage } from './camera';
import { orderByDepth } from './depth-order';

type Flat = readonly [x: number, y: number];

/** One face of the folded box on the page, nearest last. */
export interface PageFace {
  readonly ring: readonly Flat[];
  /** Scores and edges to draw along it. */
  readonly lines: readonly (readonly [Flat, Flat])[];
  /** 0 to 1: how squarely the light falls on the side that is seen. */
  readonly light: number;
  readonly side: 'inside' | 'outside';
}

export interface FoldedView {
  readonly faces: readonly PageFace[];
  /** What the box darkens on the table. */
  readonly shadow: readonly Flat[];
  readonly box: {
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  };
}

/** Daylight from a window behind the maker's left shoulder. Unit length. */
const LIGHT: Vector = [-0.48, -0.42, 0.77];
/** Layers of card that lie on one another are shown this far apart, mm: enough to know which is on top. */
const LAYER = 0.2;

/** How far a lid is closed in a picture of it. */
const AJAR = 0.62;

interface PlacedFace extends FoldedFace {
  readonly lines: readonly (readonly [Vector, Vector])[];
  readonly inside: Vector;
}

/** The folded box as seen by an eye far away: which faces, how light, in which order to paint them. Lids hover over what they cover. */
export function viewFolded(net: BoxNet, camera: Camera): FoldedView {
  const pieces = asItStands(net).map(standPiece);
  const faces = pieces.flatMap((piece, at) => (at === 0 ? piece : hover(piece, pieces[0] ?? [])));
  const flat = (point: Vector): Flat => onPage(camera, point);
  const painted = orderByDepth(faces, camera).map((face): PageFace => {
    const seesInside = dot(face.inside, camera.towards) > 0;
    const outward = dot(face.inside, LIGHT) * (seesInside ? 1 : -1);
    return {
      ring: face.ring.map(flat),
      lines: face.lines.map(([a, b]) => [flat(a), flat(b)]),
      light: 0.5 + outward / 2,
      side: seesInside ? 'inside' : 'outside',
    };
  });
  const floor = Math.min(...faces.flatMap(({ ring }) => ring.map(([, , z]) => z)));
  const shadow = hull(faces.flatMap(({ ring }) => ring.map((point) => flat(shadowOf(point, floor)))));
  return { faces: painted, shadow, box: boxAround([...painted.flatMap(({ ring }) => ring), ...shadow]) };
}

/** A piece folded and stood on the table: z up, the front towards the maker. */
function standPiece(piece: PieceNet): PlacedFace[] {
  const folded = foldPiece(piece, anglesToShow(piece));
  const linesOf = edgesByFace(piece, folded);
  const layer = layersOf(piece);
  const upright = piece.faces[0]?.role === 'wall' && !piece.curves.some(({ kind }) => kind === 'score');
  // A wall on the bench has its inside up and its top away: stand it up so that its outside looks at the maker.
  const stand = (v: Vector): Vector => (upright ? [v[0], v[2], v[1]] : v);
  return folded.flatMap((face, at) => {
    if (piece.faces[at]?.role === 'glueTab') return [];
    const inside = insideOf(face.pose);
    const lift = (v: Vector): Vector => {
      const out = LAYER * (layer.get(at) ?? 0);
      return stand([v[0] - inside[0] * out, v[1] - inside[1] * out, v[2] - inside[2] * out]);
    };
    return [
      {
        pose: face.pose,
        ring: face.ring.map(lift),
        lines: (linesOf.get(at) ?? []).map(([a, b]) => [lift(a), lift(b)] as const),
        inside: stand(inside),
      },
    ];
  });
}

/** Every line of the net that is seen on the box, with the faces on both its sides. */
function edgesByFace(piece: PieceNet, folded: readonly FoldedFace[]) {
  const lines = new Map<number, (readonly [Vector, Vector])[]>();
  for (const { a, b, kind, left, right } of piece.edges) {
    if (kind === 'join') continue;
    for (const at of right === null ? [left] : [left, right]) {
      const pose: Pose | undefined = folded[at]?.pose;
      if (!pose) continue;
      const ends = [placeOf(pose, toMm(a.x), toMm(a.y)), placeOf(pose, toMm(b.x), toMm(b.y))] as const;
      lines.set(at, [...(lines.get(at) ?? []), ends]);
    }
  }
  return lines;
}

/** A lid that is tucked last is left ajar, so that the picture tells how the box opens. */
function anglesToShow(piece: PieceNet): number[] {
  if (piece.closing.at(-1)?.do !== 'tuck') return restAngles(piece);
  return anglesDuring(closingStates(piece), piece.closing.length - 1, AJAR, piece.closing);
}

/** A cover turned over and lifted clear of what it covers. */
function hover(cover: readonly PlacedFace[], below: readonly PlacedFace[]): PlacedFace[] {
  const [own, under] = [spanOf(cover), spanOf(below)];
  const shift: Vector = [
    (under.low[0] + under.high[0] - own.low[0] - own.high[0]) / 2,
    0,
    under.high[2] + own.high[2] + 0.55 * (under.high[2] - under.low[2]),
  ];
  const middle = under.low[1] + under.high[1];
  const turn = ([x, y, z]: Vector): Vector => [
    x + shift[0],
    middle / 2 - (y - (own.low[1] + own.high[1]) / 2),
    shift[2] - z,
  ];
  return cover.map((face) => ({
    ...face,
    ring: face.ring.map(turn),
    lines: face.lines.map(([a, b]) => [turn(a), turn(b)] as const),
    inside: [face.inside[0], -face.inside[1], -face.inside[2]],
  }));
}

function spanOf(faces: readonly PlacedFace[]): { low: Vector; high: Vector } {
  const points = faces.flatMap(({ ring }) => ring);
  const along = (axis: 0 | 1 | 2, pick: (...values: number[]) => number) =>
    pick(...points.map((point) => point[axis]));
  return {
    low: [along(0, Math.min), along(1, Math.min), along(2, Math.min)],
    high: [along(0, Math.max), along(1, Math.max), along(2, Math.max)],
  };
}

const shadowOf = ([x, y, z]: Vector, floor: number): Vector => {
  const fall = (z - floor) * 0.45;
  return [x - (LIGHT[0] / LIGHT[2]) * fall, y - (LIGHT[1] / LIGHT[2]) * fall, floor];
};

/** The convex ring round points (Andrew's monotone chain). */
function hull(points: readonly Flat[]): Flat[] {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (run: readonly Flat[]) => {
    const chain: Flat[] = [];
    for (const point of run) {
      while (chain.length > 1 && turnsRight(chain.at(-2)!, chain.at(-1)!, point)) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

const turnsRight = (a: Flat, b: Flat, c: Flat) =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) <= 0;

function boxAround(points: readonly Flat[]): FoldedView['box'] {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}
