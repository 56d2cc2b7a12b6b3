import { describe, expect, it } from 'vitest';
import { seenFrom } from '../../../src/core/checks/check-joints';
import { anglesDuring, closingStates, distance, foldPiece, insideOf } from '../../../src/core/fold';
import { layNet } from '../../../src/core/net';
import { crashLock } from '../../../src/core/styles/boxes/crash-lock';

const [box] = layNet(crashLock, { sizes: {}, caliperUm: 300 }).pieces;
if (box === undefined) throw new Error('no box');
const face = (name: string) => box.faces.findIndex((one) => one.name === name);
const opening = box.closing.findIndex((act) => act.do === 'fold' && act.through !== undefined);
const states = closingStates(box);
const during = (part: number) => foldPiece(box, anglesDuring(states, opening, part, box.closing));

/** As the tube opens, rigid panels glued to one another must stay so. The stops come from a spherical triangle; here they are folded in space. */
describe('a crash-lock bottom as the box opens', () => {
  it.each([1, 2, 3, 4, 5].map((stop) => [stop * 15, stop / 6] as const))(
    'with its corner %d degrees wide, the glued corners lie on their hooks and the seam stays closed',
    (corner, part) => {
      const faces = during(part);
      for (const [glued, onto] of [
        ['rightCorner', 'backFlap'],
        ['leftCorner', 'frontFlap'],
        ['tab', 'back'],
      ] as const) {
        const target = faces[face(onto)];
        const off = faces[face(glued)]?.ring.map((point) =>
          target === undefined ? 1 : Math.abs(seenFrom(target.pose, point)[2]),
        );
        expect(Math.max(...(off ?? [1])), `${glued} off ${onto}, mm`).toBeLessThan(0.01);
      }
      // the hook's start and the corner's are one point of the box
      const [hook, flap] = [faces[face('backFlap')], faces[face('rightFlap')]];
      expect(distance(hook?.ring[0] ?? [0, 0, 0], flap?.ring[1] ?? [9, 9, 9])).toBeLessThan(0.01);
      const [front, right] = [faces[face('back')], faces[face('right')]];
      if (front === undefined || right === undefined) throw new Error('no walls');
      const cosine = insideOf(front.pose).reduce(
        (sum, value, axis) => sum + value * (insideOf(right.pose)[axis] ?? 0),
        0,
      );
      expect((Math.acos(-cosine) * 180) / Math.PI).toBeCloseTo(corner, 6);
    },
  );

  it('turned evenly instead, the corners would leave their hooks', () => {
    const even = foldPiece(box, anglesDuring(states, opening, 0.5));
    const target = even[face('backFlap')];
    if (target === undefined) throw new Error('no flap');
    const off = (even[face('rightCorner')]?.ring ?? []).map((point) =>
      Math.abs(seenFrom(target.pose, point)[2]),
    );
    expect(Math.max(...off)).toBeGreaterThan(1);
  });
});
