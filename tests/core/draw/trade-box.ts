import type { Face, NetEdge, PieceNet, Point } from '../../../src/core/net/types';
import type { Role } from '../../../src/core/styles/language/types';
import { inches, type Ticks, ticks } from '../../../src/core/units/ticks';

/**
 * A box 3 1/2 wide, 1 1/2 deep, 3 high, tab 1, bottom flaps 1 1/2 (common practice, no source), written out by hand:
 * blank 11 across, 4 1/2 up; upright scores at 3 1/2, 5, 8 1/2, 10; level score 3 below the top edge; three slits from the near edge
 * up to that score, and the foot of the tab cut away.
 */
const X = [0, 7, 10, 17, 20, 22].map((halves) => inches(0, halves, 2)); // 0, 3 1/2, 5, 8 1/2, 10, 11 in
const [NEAR, FOLD, TOP] = [ticks(0), inches(1, 1, 2), inches(4, 1, 2)];
const WALLS = ['front', 'right', 'back', 'left', 'tab'];

const at = (x: Ticks, y: Ticks): Point => ({ x, y });
const rectangle = (left: Ticks, near: Ticks, right: Ticks, far: Ticks) => [
  at(left, near),
  at(right, near),
  at(right, far),
  at(left, far),
];

const face = (name: string, role: Role, ring: readonly Point[]): Face => ({
  name,
  panel: name,
  role,
  ring,
  holes: [],
});
const edge = (
  kind: NetEdge['kind'],
  a: Point,
  b: Point,
  left: number,
  right: number | null,
  foldDeg = 0,
): NetEdge => ({
  a,
  b,
  kind,
  left,
  right,
  foldDeg,
  hinge: null,
  curve: null,
});

const faces: Face[] = [
  ...WALLS.map((name, i) => face(name, i === 4 ? 'glueTab' : 'wall', rectangle(X[i]!, FOLD, X[i + 1]!, TOP))),
  ...WALLS.slice(0, 4).map((name, i) =>
    face(`${name}Flap`, 'bottomFlap', rectangle(X[i]!, NEAR, X[i + 1]!, FOLD)),
  ),
];

const edges: NetEdge[] = [
  ...WALLS.map((_, i) => edge('edge', at(X[i + 1]!, TOP), at(X[i]!, TOP), i, null)),
  edge('edge', at(X[0]!, TOP), at(X[0]!, FOLD), 0, null),
  edge('edge', at(X[0]!, FOLD), at(X[0]!, NEAR), 5, null),
  edge('edge', at(X[5]!, FOLD), at(X[5]!, TOP), 4, null),
  ...[0, 1, 2, 3].map((i) => edge('edge', at(X[i]!, NEAR), at(X[i + 1]!, NEAR), 5 + i, null)),
  ...[1, 2, 3, 4].map((i) => edge('score', at(X[i]!, FOLD), at(X[i]!, TOP), i - 1, i, 90)),
  ...[0, 1, 2, 3].map((i) => edge('score', at(X[i]!, FOLD), at(X[i + 1]!, FOLD), i, 5 + i, 90)),
  ...[1, 2, 3].map((i) => edge('slit', at(X[i]!, NEAR), at(X[i]!, FOLD), 4 + i, 5 + i)),
  edge('cut', at(X[4]!, NEAR), at(X[4]!, FOLD), 8, null),
  edge('cut', at(X[4]!, FOLD), at(X[5]!, FOLD), 4, null),
];

export const tradeBox: PieceNet = {
  id: 'box',
  label: 'box',
  blank: { across: X[5]!, up: TOP },
  faces,
  edges,
  hinges: [],
  curves: [],
  joints: [
    { tab: 4, target: 0, lap: 'inside', carries: false, gap: ticks(0) },
    { tab: 5, target: 6, lap: 'outside', carries: true, gap: ticks(0) },
  ],
  seams: [],
  overlaps: [],
  closing: [],
  waste: [rectangle(X[4]!, NEAR, X[5]!, FOLD)],
  shell: [],
  roomMm3: 0,
};
