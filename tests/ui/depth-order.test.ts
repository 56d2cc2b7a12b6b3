import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cross, dot, minus, plus, times, type Vector } from '../../src/core/fold';
import { layNet } from '../../src/core/net';
import { STYLES } from '../../src/core/styles';
import { lookFrom, onPage } from '../../src/ui/folded/camera';
import { normalOf, orderByDepth, type SpaceFace } from '../../src/ui/folded/depth-order';
import { viewFolded } from '../../src/ui/folded/folded-view';
import { SEED } from '../seed';

const rectangle = (corner: Vector, along: Vector, up: Vector): SpaceFace => ({
  ring: [corner, plus(corner, along), plus(plus(corner, along), up), plus(corner, up)],
});

/** A box without a lid, as six-sided as a tray gets: floor and four walls. */
function tray(width: number, depth: number, height: number): SpaceFace[] {
  const [x, y, z]: [Vector, Vector, Vector] = [
    [width, 0, 0],
    [0, depth, 0],
    [0, 0, height],
  ];
  const origin: Vector = [0, 0, 0];
  return [
    rectangle(origin, x, y),
    rectangle(origin, x, z),
    rectangle(y, x, z),
    rectangle(origin, y, z),
    rectangle(x, y, z),
  ];
}

/** How near the eye a face is along the line of sight through a point of the page; null where the line misses it. An oracle by casting rays. */
function depthAt(
  face: SpaceFace,
  at: readonly [number, number],
  camera: ReturnType<typeof lookFrom>,
): number | null {
  const normal = normalOf(face.ring);
  const slope = dot(normal, camera.towards);
  if (Math.abs(slope) < 1e-6) return null;
  const through = plus(times(camera.across, at[0]), times(camera.up, -at[1]));
  const reach = dot(minus(face.ring[0]!, through), normal) / slope;
  const hit = plus(through, times(camera.towards, reach));
  const inside = face.ring.every((point, i) => {
    const side = minus(face.ring[(i + 1) % face.ring.length]!, point);
    return dot(cross(side, minus(hit, point)), normal) > 1e-6;
  });
  return inside ? reach : null;
}

describe('the folded picture', () => {
  test('paints last, at every point, the face that a line of sight meets first', () => {
    const side = fc.double({ min: 10, max: 200, noNaN: true });
    const turn = fc.double({ min: -80, max: 80, noNaN: true });
    const down = fc.double({ min: 5, max: 80, noNaN: true });
    fc.assert(
      fc.property(side, side, side, turn, down, (width, depth, height, turnDeg, downDeg) => {
        const camera = lookFrom(turnDeg, downDeg);
        const painted = orderByDepth(tray(width, depth, height), camera);
        for (const face of painted) {
          const middle = times(face.ring.reduce<Vector>(plus, [0, 0, 0]), 1 / face.ring.length);
          const at = onPage(camera, middle);
          const hits = painted.map((each) => depthAt(each, at, camera));
          const seen = hits.findLastIndex((hit) => hit !== null);
          const nearest = Math.max(...hits.map((hit) => hit ?? Number.NEGATIVE_INFINITY));
          if (seen >= 0) expect(hits[seen]).toBeCloseTo(nearest, 6);
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('the oracle sees a wrong order', () => {
    const camera = lookFrom(30, 30);
    const faces = tray(100, 80, 40);
    const at = onPage(camera, [50, 0, 20]);
    const hits = faces.toReversed().map((face) => depthAt(face, at, camera));
    const last = hits.findLast((hit) => hit !== null);
    expect(last).toBeLessThan(Math.max(...hits.map((hit) => hit ?? Number.NEGATIVE_INFINITY)));
  });

  test.each(STYLES.map((style) => [style.name, style] as const))(
    'shows a %s at its usual size, all of it',
    (_, style) => {
      const { faces, box } = viewFolded(layNet(style, { sizes: {}, caliperUm: 300 }), lookFrom(32, 24));
      const points = faces.flatMap(({ ring }) => ring);
      expect(points.flat().every(Number.isFinite)).toBe(true);
      expect(box.width).toBeGreaterThan(10);
      for (const [x, y] of points) {
        expect(x).toBeGreaterThanOrEqual(box.left - 1e-9);
        expect(y).toBeLessThanOrEqual(box.top + box.height + 1e-9);
      }
      for (const { light } of faces) {
        expect(light).toBeGreaterThanOrEqual(0);
        expect(light).toBeLessThanOrEqual(1);
      }
    },
  );
});
