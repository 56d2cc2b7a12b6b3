import type { ClosingAct, Face, Hinge, NetEdge, PieceNet, Point } from '../../../src/core/net/types';
import { inches, type Ticks, ticks } from '../../../src/core/units';

/** A net drawn by hand from its faces' corners, for checks that must not lean on the project's own layout. */
interface HandLaid {
  readonly blank: readonly [across: number, up: number];
  /** Corners counter-clockwise, in inches. */
  readonly faces: Readonly<Record<string, readonly (readonly [number, number])[]>>;
  /** Parent, child, fold in degrees. */
  readonly folds: readonly (readonly [parent: string, child: string, deg: number])[];
  readonly glue?: readonly (readonly [panel: string, onto: string])[];
  /** Holes by face, corners clockwise; `round` marks their edges as chords of a curve, `half` every second one. */
  readonly holes?: Readonly<
    Record<
      string,
      readonly { readonly ring: readonly (readonly [number, number])[]; readonly round?: 'all' | 'half' }[]
    >
  >;
}

const rectangle = (x: number, y: number, across: number, up: number): (readonly [number, number])[] => [
  [x, y],
  [x + across, y],
  [x + across, y + up],
  [x, y + up],
];

const inch = (length: number): Ticks => inches(length);

function layByHand({ blank, faces, folds, glue = [], holes = {} }: HandLaid): PieceNet {
  const names = Object.keys(faces);
  const laid: Face[] = names.map((name) => ({
    name,
    panel: name,
    role: 'wall',
    ring: (faces[name] ?? []).map(([x, y]) => ({ x: inch(x), y: inch(y) })),
    holes: [],
  }));
  const size = { across: inch(blank[0]), up: inch(blank[1]) };
  const hinges: Hinge[] = [];
  const edges = pairSides(laid).map(({ a, b, left, right }): NetEdge => {
    const plain = { a, b, left, right, foldDeg: 0, hinge: null, curve: null };
    if (right === null) return { ...plain, kind: onBlank(a, b, size) ? 'edge' : 'cut' };
    const fold = folds.find(([parent, child]) =>
      isPair([left, right], [names.indexOf(parent), names.indexOf(child)]),
    );
    if (!fold) return { ...plain, kind: 'slit' };
    const [parent, panel, restDeg] = fold;
    hinges.push({
      parent: names.indexOf(parent),
      child: names.indexOf(panel),
      a,
      b,
      restDeg,
      kind: 'score',
      panel,
    });
    return { ...plain, kind: 'score', foldDeg: restDeg, hinge: hinges.length - 1 };
  });
  names.forEach((name, left) => {
    for (const { ring, round } of holes[name] ?? [])
      ring.forEach(([x, y], i) => {
        const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
        const curve = round === 'all' || (round === 'half' && i % 2 === 1) ? 0 : null;
        const [a, b] = [
          { x: inch(x), y: inch(y) },
          { x: inch(nextX), y: inch(nextY) },
        ];
        edges.push({ a, b, kind: 'cut', left, right: null, foldDeg: 0, hinge: null, curve });
      });
  });
  const joints = glue.map(([panel, onto]) => ({
    tab: names.indexOf(panel),
    target: names.indexOf(onto),
    lap: 'inside' as const,
    carries: false,
    gap: ticks(0),
  }));
  const closing: ClosingAct[] = [
    ...hinges.flatMap(({ restDeg, panel }, i) =>
      restDeg === 0
        ? []
        : [{ do: 'fold' as const, hinges: [i], toDeg: [restDeg], panels: [panel], bends: false, tip: null }],
    ),
    ...joints.map((_, joint) => ({ do: 'glue' as const, joint, tip: null })),
  ];
  return {
    id: 'hand',
    label: 'Hand-laid',
    blank: size,
    faces: laid,
    edges,
    hinges,
    curves: [],
    joints,
    seams: [],
    overlaps: [],
    closing,
    waste: [],
    shell: [],
    roomMm3: 0,
  };
}

const isPair = (some: readonly number[], other: readonly number[]): boolean =>
  [...some].sort().join() === [...other].sort().join();

function onBlank(a: Point, b: Point, blank: { across: Ticks; up: Ticks }): boolean {
  const both = (p: (q: Point) => number, at: number): boolean => p(a) === at && p(b) === at;
  return (
    [0, blank.across].some((at) => both((q) => q.x, at)) || [0, blank.up].some((at) => both((q) => q.y, at))
  );
}

interface Side {
  readonly a: Point;
  readonly b: Point;
  readonly left: number;
  readonly right: number | null;
}

/** Every side of every face, split where another face has a corner, and paired with the side that runs the other way. */
function pairSides(faces: readonly Face[]): Side[] {
  const corners = faces.flatMap((face) => face.ring);
  const sides = faces.flatMap((face, left) =>
    face.ring.flatMap((a, i) =>
      splitSide(a, face.ring[(i + 1) % face.ring.length] ?? a, corners).map((s) => ({ ...s, left })),
    ),
  );
  const paired: Side[] = [];
  const used = new Set<number>();
  sides.forEach((side, i) => {
    if (used.has(i)) return;
    const mate = sides.findIndex((other) => same(other.a, side.b) && same(other.b, side.a));
    if (mate >= 0) used.add(mate);
    paired.push({ ...side, right: sides[mate]?.left ?? null });
  });
  return paired;
}

const same = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

function splitSide(a: Point, b: Point, corners: readonly Point[]): { a: Point; b: Point }[] {
  const along = (p: Point): number => (p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y);
  const off = (p: Point): number => (p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x);
  const between = corners.filter((p) => off(p) === 0 && along(p) > 0 && along(p) < along(b));
  const stops = [a, ...between.sort((p, q) => along(p) - along(q)), b].filter(
    (p, i, all) => i === 0 || !same(p, all[i - 1] ?? p),
  );
  return stops.slice(1).map((end, i) => ({ a: stops[i] ?? end, b: end }));
}

/** 3 1/2 wide, 1 1/2 deep, 3 high, tab 1, bottom flaps 1 1/2. source: common practice of the trade, no source. */
export const tradeBox = layByHand({
  blank: [11, 4.5],
  faces: {
    front: rectangle(0, 1.5, 3.5, 3),
    right: rectangle(3.5, 1.5, 1.5, 3),
    back: rectangle(5, 1.5, 3.5, 3),
    left: rectangle(8.5, 1.5, 1.5, 3),
    tab: rectangle(10, 1.5, 1, 3),
    frontFlap: rectangle(0, 0, 3.5, 1.5),
    rightFlap: rectangle(3.5, 0, 1.5, 1.5),
    backFlap: rectangle(5, 0, 3.5, 1.5),
    leftFlap: rectangle(8.5, 0, 1.5, 1.5),
  },
  folds: [
    ['front', 'right', 90],
    ['right', 'back', 90],
    ['back', 'left', 90],
    ['left', 'tab', 90],
    ['front', 'frontFlap', 90],
    ['right', 'rightFlap', 90],
    ['back', 'backFlap', 90],
    ['left', 'leftFlap', 90],
  ],
  glue: [['tab', 'front']],
});

/** A lid 6 1/16 × 5 1/16, walls 1, corner squares hinged on the front and back walls. source: common practice, no source. */
export const lid = layByHand({
  blank: [8.0625, 7.0625],
  faces: {
    top: rectangle(1, 1, 6.0625, 5.0625),
    left: rectangle(0, 1, 1, 5.0625),
    right: rectangle(7.0625, 1, 1, 5.0625),
    front: rectangle(1, 0, 6.0625, 1),
    back: rectangle(1, 6.0625, 6.0625, 1),
    leftFront: rectangle(0, 0, 1, 1),
    leftBack: rectangle(0, 6.0625, 1, 1),
    rightFront: rectangle(7.0625, 0, 1, 1),
    rightBack: rectangle(7.0625, 6.0625, 1, 1),
  },
  folds: [
    ['top', 'left', 90],
    ['top', 'right', 90],
    ['top', 'front', 90],
    ['top', 'back', 90],
    ['front', 'leftFront', 90],
    ['back', 'leftBack', 90],
    ['front', 'rightFront', 90],
    ['back', 'rightBack', 90],
  ],
  glue: [
    ['leftFront', 'left'],
    ['rightFront', 'right'],
    ['leftBack', 'left'],
    ['rightBack', 'right'],
  ],
});

/** Two panels meeting on a slanted score, one corner snipped off: nothing on it is square. */
export const slanted = layByHand({
  blank: [6, 4],
  faces: {
    body: [
      [0, 0],
      [4, 0],
      [2, 4],
      [0, 4],
    ],
    wing: [
      [4, 0],
      [6, 0],
      [6, 3],
      [5, 4],
      [2, 4],
    ],
  },
  folds: [['body', 'wing', -135.5]],
});

const hole = (x: number, y: number, size: number): (readonly [number, number])[] => [
  [x, y],
  [x, y + size],
  [x + size, y + size],
  [x + size, y],
];

/** What no style here has: a window, a round hole, a slot, and a slit that no edge opens. */
export const pierced = layByHand({
  blank: [8, 4],
  faces: {
    back: rectangle(0, 0, 4, 4),
    foot: rectangle(4, 0, 4, 1),
    middle: rectangle(4, 1, 4, 2),
    head: rectangle(4, 3, 4, 1),
  },
  folds: [
    ['back', 'foot', 90],
    ['foot', 'middle', 0],
    ['middle', 'head', -90],
    ['back', 'head', 90],
  ],
  holes: {
    back: [{ ring: hole(0.5, 0.5, 1) }, { ring: hole(2, 0.5, 1), round: 'all' }],
    middle: [{ ring: hole(5, 1.5, 1), round: 'half' }],
  },
});

/** A tab with a foot cut off and both ends tapered, a V cut into the near edge, and a slit on the slant. */
export const notched = layByHand({
  blank: [10, 4],
  faces: {
    left: [
      [0, 1],
      [2, 1],
      [3, 2],
      [4, 1],
      [4, 4],
      [0, 4],
    ],
    lower: [
      [4, 1],
      [6, 1],
      [8, 3],
      [4, 3],
    ],
    upper: [
      [8, 3],
      [8, 4],
      [4, 4],
      [4, 3],
    ],
    wing: [
      [6, 1],
      [6, 0],
      [8, 0],
      [8, 3],
    ],
    tab: [
      [8, 1],
      [10, 1.5],
      [10, 3.5],
      [8, 4],
    ],
    foot: rectangle(0, 0, 1, 1),
  },
  folds: [
    ['left', 'lower', 90],
    ['left', 'upper', 90],
    ['lower', 'upper', 90],
    ['upper', 'tab', 180],
    ['wing', 'tab', 180],
    ['left', 'foot', -180],
  ],
});
