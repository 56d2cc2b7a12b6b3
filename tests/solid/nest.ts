import { Box3, Matrix4, Vector3 } from 'three';
import type { Body, Built } from './clashes';
import { pointOn } from './places';
import type { Solids } from './solids';

/** One piece in or under another: how it stands there, and the ways it must be free to move. */
interface Nest {
  readonly outer: string;
  readonly inner: string;
  readonly stands: 'upside down in the lid' | 'on the bottom flaps' | 'in the sleeve';
  /** Layers between the two, where it is no plain floor a cut rim stands on: points on the lid's floor, and a folded rim. */
  readonly layers?: number;
  /** Ways across, each with the words of the fit whose ease it is. */
  readonly ways: readonly (readonly [way: readonly [number, number, number], fit: string])[];
}

const ACROSS = [1, 0, 0] as const;
const DEEP = [0, 1, 0] as const;
const UP = [0, 0, 1] as const;

export const NESTS: Readonly<Record<string, readonly Nest[]>> = {
  'tray-lid': [
    {
      outer: 'lid',
      inner: 'tray',
      stands: 'upside down in the lid',
      ways: [
        [ACROSS, 'left to right'],
        [DEEP, 'front to back'],
      ],
    },
  ],
  'folded-square': [
    {
      outer: 'lid',
      inner: 'box',
      stands: 'upside down in the lid',
      layers: 2,
      ways: [
        [ACROSS, 'left to right'],
        [DEEP, 'front to back'],
      ],
    },
  ],
  'prism-lid': [
    { outer: 'lid', inner: 'box', stands: 'upside down in the lid', ways: [[DEEP, 'lid over']] },
    { outer: 'box', inner: 'floor', stands: 'on the bottom flaps', ways: [[UP, 'floor between']] },
  ],
  'lidded-star': [
    {
      outer: 'lid',
      inner: 'star',
      stands: 'upside down in the lid',
      ways: [
        [ACROSS, 'lid over'],
        [UP, 'lid over'],
      ],
    },
    { outer: 'star', inner: 'floor', stands: 'on the bottom flaps', ways: [[UP, 'floor']] },
    { outer: 'lid', inner: 'top', stands: 'on the bottom flaps', ways: [[UP, 'top between']] },
  ],
  'star-box': [{ outer: 'star', inner: 'floor', stands: 'on the bottom flaps', ways: [[UP, 'floor']] }],
  'sleeve-drawer': [
    {
      outer: 'sleeve',
      inner: 'drawer',
      stands: 'in the sleeve',
      ways: [
        [ACROSS, 'across'],
        [UP, 'up and down'],
      ],
    },
  ],
};

/** A hair between what lies on one another. */
const HAIR_MM = 0.03;

const cornersOf = ({ piece, stands }: Built): Vector3[] =>
  (piece.shell.length > 0 ? piece.shell : piece.faces.map((_, face) => face)).flatMap((face) => {
    const stand = stands[face];
    return stand === undefined ? [] : (piece.faces[face]?.ring ?? []).map((at) => pointOn(stand, at));
  });

const meanOf = (points: readonly Vector3[]) =>
  points.reduce((sum, p) => sum.add(p), new Vector3()).divideScalar(points.length);

/** Of what has notches in its rim: the middle of the box round it. */
const middleOf = (points: readonly Vector3[]) =>
  new Box3().setFromPoints([...points]).getCenter(new Vector3());

/** An axis square to what stands upright: of a tube the way its walls run up, of a tray the way out of its floor. */
const isTube = ({ piece, stands }: Built): boolean => {
  const [first = 0] = piece.shell;
  return (
    (stands[first]?.inside.z ?? 1) > 0.5 && piece.shell.length > 0 && piece.faces[first]?.role === 'wall'
  );
};

/** Turns a piece so that it stands in the outer one, before it is moved across. */
function turned(nest: Nest, outer: Built, inner: Built): Matrix4 {
  if (nest.stands === 'in the sleeve') return new Matrix4();
  // both are tubes that lie on the bench: the inner one's rim is turned to the outer one's flaps
  if (nest.stands === 'upside down in the lid' && isTube(outer)) return new Matrix4().makeRotationX(Math.PI);
  // a floor lies square to the walls of its tube; a tray or a tube is put in the lid with its rim down
  const standing = new Matrix4().set(1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1);
  if (nest.stands === 'on the bottom flaps' || isTube(inner)) return standing;
  return new Matrix4().makeRotationX(Math.PI);
}

/** Where the inner piece stands in the outer one, in the middle. */
function placed(nest: Nest, outer: Built, inner: Built): Matrix4 {
  const turn = turned(nest, outer, inner);
  const t = outer.caliperMm;
  const [around, within] = [cornersOf(outer), cornersOf(inner).map((p) => p.applyMatrix4(turn))];
  const up = nest.stands !== 'in the sleeve' && isTube(outer) ? 'y' : 'z';
  // corners far from the middle point the same way
  const flat = (p: Vector3, middle: Vector3) =>
    up === 'y'
      ? { angle: Math.atan2(p.x - middle.x, p.z - middle.z), far: Math.hypot(p.x - middle.x, p.z - middle.z) }
      : {
          angle: Math.atan2(p.y - middle.y, p.x - middle.x),
          far: Math.hypot(p.x - middle.x, p.y - middle.y),
        };
  const farthest = (points: readonly Vector3[]) => {
    const middle = meanOf(points);
    return points.map((p) => flat(p, middle)).reduce((best, p) => (p.far > best.far + 0.01 ? p : best));
  };
  const spin = isTube(outer) || isTube(inner) ? farthest(around).angle - farthest(within).angle : 0;
  const about = up === 'y' ? new Matrix4().makeRotationY(spin) : new Matrix4().makeRotationZ(spin);
  const there = within.map((p) => p.applyMatrix4(about));
  const middle = isTube(outer) || isTube(inner) ? meanOf : middleOf;
  const move = middle(around).sub(middle(there));
  const lowest = Math.min(...there.map((p) => p[up]));
  if (nest.stands === 'in the sleeve') move.z = 2 * t + HAIR_MM - lowest;
  else if (up === 'z') move.z = (1 / 2 + (nest.layers ?? 0)) * t + HAIR_MM - lowest;
  else {
    const flap = outer.piece.faces.findIndex(({ role }) => role === 'bottomFlap');
    const [corner = { x: 0, y: 0 }] = outer.piece.faces[flap]?.ring ?? [];
    const stand = outer.stands[flap];
    // a lid's top lies on its flaps, and the rim below that
    const layers = nest.stands === 'upside down in the lid' ? (3 / 2) * t : t;
    if (stand !== undefined) move.y = pointOn(stand, corner).y + layers + HAIR_MM - lowest;
  }
  return new Matrix4().makeTranslation(move.x, move.y, move.z).multiply(about).multiply(turn);
}

/** How far the inner piece runs into the outer one when it is moved so, mm; 0 if it is clear. */
function runsInto(outer: Built, bodies: readonly Body[], by: Vector3, solids: Solids): number {
  let worst = 0;
  const ways = [new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1)];
  for (const { solid } of bodies) {
    const moved = solids.keep(solid.translate([by.x, by.y, by.z]));
    const p = moved.boundingBox();
    for (const other of outer.bodies) {
      const q = other.solid.boundingBox();
      if ([0, 1, 2].some((k) => (p.max[k] ?? 0) < (q.min[k] ?? 0) || (q.max[k] ?? 0) < (p.min[k] ?? 0)))
        continue;
      worst = Math.max(
        worst,
        solids.reachInto(moved, other.solid, ways, () => []),
      );
    }
  }
  return worst;
}

/** What of a nest is tight: along each way the inner piece has to be free to move by the ease, wherever within the outer one that is. */
export function tightIn(
  nest: Nest,
  outer: Built,
  inner: Built,
  easeMm: (fit: string) => number,
  solids: Solids,
): readonly string[] {
  const place = placed(nest, outer, inner);
  const bodies = inner.bodies.map(
    ({ solid, faces }): Body => ({
      solid: solids.keep(solid.transform(place.elements)),
      faces,
    }),
  );
  const t = outer.caliperMm;
  return nest.ways.flatMap(([[x, y, z], fit]) => {
    const way = new Vector3(x, y, z);
    const half = easeMm(fit) / 2;
    const slides = nest.stands === 'in the sleeve' && z === 1;
    const starts = slides ? [half] : [0, t / 2, -t / 2, t, -t];
    let least = Infinity;
    for (const start of starts) {
      const worst = Math.max(
        ...[-half, half].map((by) => runsInto(outer, bodies, way.clone().multiplyScalar(start + by), solids)),
      );
      if (worst === 0) return [];
      least = Math.min(least, worst);
    }
    return [`${nest.inner} in ${nest.outer}, ${fit}: ${(least + 0.05).toFixed(2)} mm too tight`];
  });
}
