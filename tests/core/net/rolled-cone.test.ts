import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anglesDuring, closingStates, foldPiece } from '../../../src/core/fold';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { SEED } from '../../seed';
import { legalBoxes } from '../../styles/legal-sizes';

const STYLE = styleById('rolled-cone')!;
/** How far the chords of a curve may stand off it, mm, and what rounding to ticks adds. */
const CHORD_MM = 0.25;
/** How closely it closes, mm. */
const CLOSES_MM = 0.06;

// Development of a right circular cone, any solid geometry textbook (from memory): a sector of radius `slant` and angle 360° × r / slant
// rolls up to a cone whose mouth has radius r and which is √(slant² − r²) high.
describe('a sector rolled about its tip', () => {
  it('is 360° × r / slant wide on the card: its arc is as long as the mouth is round', () => {
    fc.assert(
      fc.property(legalBoxes(STYLE), (asked) => {
        const box = layNet(STYLE, asked);
        const [across = 0, slant = 0] = [box.values['across'], box.values['slant']].map(
          (ticks) => (ticks ?? 0) / 320,
        );
        const [arc] = box.pieces[0]!.curves;
        const [a, b] = [arc!.a, arc!.b].map(({ x, y }) => Math.atan2(y - arc!.centre[1], x - arc!.centre[0]));
        expect(arc!.radius / 320).toBeCloseTo(slant, 1);
        expect(((b! - a!) * arc!.radius) / 320).toBeCloseTo(Math.PI * across, 0);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it('closes to a round mouth of the asked width, so far above the tip', () => {
    fc.assert(
      fc.property(legalBoxes(STYLE), (asked) => {
        const box = layNet(STYLE, asked);
        const piece = box.pieces[0]!;
        const [across = 0, slant = 0] = [box.values['across'], box.values['slant']].map(
          (ticks) => (ticks ?? 0) / 320,
        );
        const rings = foldPiece(piece).map(({ ring }) => ring);
        const rim = rings.slice(0, piece.shell.length).map(([, from]) => from!);
        const tip = rings[0]![0]!;
        const middle = [0, 1, 2].map((axis) => rim.reduce((sum, p) => sum + p[axis]!, 0) / rim.length);
        const from = (p: readonly number[], q: readonly number[]) =>
          Math.hypot(p[0]! - q[0]!, p[1]! - q[1]!, p[2]! - q[2]!);
        for (const p of rim) expect(Math.abs(from(p, middle) - across / 2)).toBeLessThan(CHORD_MM);
        const height = Math.sqrt(slant ** 2 - (across / 2) ** 2);
        expect(Math.abs(from(middle, tip) - height)).toBeLessThan(CHORD_MM);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it('rolls up with its overlap inside the edge it passes, all the way until it is closed', () => {
    fc.assert(
      fc.property(legalBoxes(STYLE), (asked) => {
        const piece = layNet(STYLE, asked).pieces[0]!;
        const states = closingStates(piece);
        const tabs = piece.faces.flatMap(({ panel }, face) => (panel === 'tab' ? [face] : []));
        for (let frame = 1; frame <= 60; frame++) {
          const faces = foldPiece(piece, anglesDuring(states, 0, frame / 60, piece.closing));
          // heights of the overlap over the first facets, from their outside: never below
          for (const tab of tabs)
            for (const first of [0, 1]) {
              const { ring: plane } = faces[first]!;
              const inside = faces[first]!.pose.filter((_, at) => at === 2 || at === 6 || at === 10);
              const along = (p: readonly number[]) =>
                [0, 1, 2].reduce((sum, axis) => sum + (p[axis]! - plane[0]![axis]!) * inside[axis]!, 0);
              expect(Math.min(...faces[tab]!.ring.map(along))).toBeGreaterThan(-CLOSES_MM);
            }
        }
      }),
      { seed: SEED, numRuns: 20 },
    );
  });
});
