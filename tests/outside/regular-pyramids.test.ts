import { describe, expect, it } from 'vitest';
import { foldPiece, roomInside } from '../../src/core/fold';
import { layNet, nameValues, type PieceNet } from '../../src/core/net';
import type { BoxStyle } from '../../src/core/styles';
import { cornet } from '../../src/core/styles/boxes/cornet';
import { flaredBowl } from '../../src/core/styles/boxes/flared-bowl';
import { starBox } from '../../src/core/styles/boxes/star-box';
import { millimetres } from '../../src/core/units/ticks';
import { facesArea } from '../styles/second-opinion';

/** A unit large enough that a tick is nothing beside it, mm. */
const UNIT = 20;

const sizing = (sizes: Readonly<Record<string, number>>, options: Readonly<Record<string, string>>) => ({
  sizes: Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, millimetres(size * UNIT)])),
  options,
  caliperUm: 300,
});
type Worked = ReturnType<typeof sizing>;

const first = (style: BoxStyle, worked: Worked): PieceNet => {
  const [piece] = layNet(style, worked).pieces;
  if (piece === undefined) throw new Error('no piece');
  return piece;
};
const roomOf = (piece: PieceNet) => roomInside(foldPiece(piece), piece.shell, 0.06) / UNIT ** 3;
const wallArea = (piece: PieceNet) =>
  facesArea({ ...piece, faces: piece.faces.filter(({ role }) => role === 'wall') }) / UNIT ** 2;

/**
 * Regular pyramids of the school books: V = B h / 3 with B = (3√3/2) a² for six sides and (5/4) a² tan 54° for five; lateral surface half the
 * perimeter times the slant. Six sides, a = 4, h = 6: slant √48, V = 48√3 = 83.138, surface 12 √48 = 83.138. From memory, re-derived.
 */
describe('the textbook regular pyramid', () => {
  it.each([
    [6, 4, 6, 48 * Math.sqrt(3), 12 * Math.sqrt(48)],
    [
      5,
      3,
      8,
      (5 / 12) * Math.tan((54 * Math.PI) / 180) * 9 * 8,
      7.5 * Math.hypot(8, 1.5 / Math.tan(Math.PI / 5)),
    ],
  ])('%d sides, edge %d, height %d', (sides, side, height, volume, surface) => {
    const apothem = side / 2 / Math.tan(Math.PI / sides);
    const worked = sizing(
      { side, slant: Math.hypot(height, apothem), tab: 0.5 },
      { sides: String(sides), mouth: 'open' },
    );
    const piece = first(cornet, worked);
    expect(roomOf(piece)).toBeCloseTo(volume, 1);
    expect(wallArea(piece)).toBeCloseTo(surface, 1);
    expect((nameValues(cornet, worked).mm['height'] ?? 0) / UNIT).toBeCloseTo(height, 3);
  });

  it('closes in on the cone of radius 3, height 4, slant 5: V = 12π, surface 15π', () => {
    let before = Number.POSITIVE_INFINITY;
    for (const sides of [5, 6, 7, 8]) {
      // its sides touch the cone all along the slant: n tan(π/n)/π times as much of both
      const side = 6 * Math.tan(Math.PI / sides);
      const piece = first(
        cornet,
        sizing({ side, slant: 5, tab: 0.5 }, { sides: String(sides), mouth: 'open' }),
      );
      const more = roomOf(piece) / (12 * Math.PI);
      expect(more).toBeCloseTo((sides * Math.tan(Math.PI / sides)) / Math.PI, 3);
      expect(wallArea(piece) / (15 * Math.PI)).toBeCloseTo(more, 3);
      expect(more).toBeGreaterThan(1);
      expect(more).toBeLessThan(before);
      before = more;
    }
    expect(before).toBeCloseTo(1.0548, 3); // 8 tan 22.5° / π
  });
});

/** The oldest worked frustum: base 4, top 2, height 6 hold 56. Moscow Mathematical Papyrus, problem 14 (about 1850 BCE; from memory). */
it('a bowl of the papyrus’s sizes holds 56', () => {
  const piece = first(flaredBowl, sizing({ width: 2, rim: 4, slant: Math.sqrt(37), tab: 0.5 }, {}));
  expect(roomOf(piece)).toBeCloseTo(56, 1);
});

/** Star polygons of the school books: the pentagram's tips stand φ² times as far out as its hollows; the hexagram is twelve equilateral triangles. From memory. */
describe('the textbook star', () => {
  it('pentagram: tips φ² = 2.618 times as far from the middle as the hollows', () => {
    const worked = sizing({ side: 1, height: 2, flap: 0.2, tab: 0.5 }, { points: '5' });
    const out = (nameValues(starBox, worked).mm['across'] ?? 0) / UNIT;
    // the walls stand along y: seen that way, tips and hollows are the corners of the star
    const corners = foldPiece(first(starBox, worked))
      .slice(0, 10)
      .flatMap(({ ring }) => ring.map(([x, , z]) => [x, z] as const));
    const middle = [0, 1].map(
      (axis) => corners.reduce((sum, corner) => sum + (corner[axis] ?? 0), 0) / corners.length,
    );
    const far = corners.map(([x, z]) => Math.hypot(x - (middle[0] ?? 0), z - (middle[1] ?? 0)) / UNIT);
    expect(Math.max(...far)).toBeCloseTo(out, 3);
    expect(Math.max(...far) / Math.min(...far)).toBeCloseTo(((1 + Math.sqrt(5)) / 2) ** 2, 3);
  });

  it('hexagram: 3√3 times the square of a wall', () => {
    const piece = first(starBox, sizing({ side: 2, height: 1, flap: 0.2, tab: 0.5 }, { points: '6' }));
    expect(roomOf(piece)).toBeCloseTo(12 * Math.sqrt(3), 2);
  });
});
