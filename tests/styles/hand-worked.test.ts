import { describe, expect, it } from 'vitest';
import { layNet, linesOf, type PieceNet } from '../../src/core/net';
import { STYLES } from '../../src/core/styles';
import { lengthOf, readFixture, roomMm3, sizingOf } from './fixture';

const straight = (piece: PieceNet, kind: 'score' | 'slit') =>
  linesOf(piece)
    .filter((line) => line.kind === kind && line.curve === null)
    .map(({ from, to }) => [from.x, from.y, to.x, to.y] as number[]);

const sorted = (lines: readonly (readonly number[])[]) =>
  lines
    .map(([a = 0, b = 0, c = 0, d = 0]) => (a < c || (a === c && b <= d) ? [a, b, c, d] : [c, d, a, b]))
    .sort((p, q) => (p.join() < q.join() ? -1 : 1));

describe.each(STYLES.map((style) => [style.name, style] as const))('%s, worked by hand', (_, style) => {
  const { cases } = readFixture(style.id);

  it('has two sizes worked by hand', () => expect(cases.length).toBeGreaterThanOrEqual(2));

  it.each(cases.map((worked) => [worked.title, worked] as const))('%s', (_title, worked) => {
    const box = layNet(style, sizingOf(worked));
    expect(box.pieces.map(({ id }) => id)).toEqual(Object.keys(worked.pieces));
    for (const piece of box.pieces) {
      const hand = worked.pieces[piece.id];
      if (hand === undefined) continue;
      const inTicks = (line: readonly number[]) => line.map((value) => lengthOf(worked, value));
      expect([piece.blank.across, piece.blank.up]).toEqual(inTicks(hand.blank));
      expect(sorted(straight(piece, 'score'))).toEqual(sorted(hand.scores.map(inTicks)));
      expect(sorted(straight(piece, 'slit'))).toEqual(sorted(hand.slits.map(inTicks)));
      const curves = linesOf(piece).filter(({ kind, curve }) => kind === 'score' && curve !== null);
      expect(sorted(curves.map(({ from, to }) => [from.x, from.y, to.x, to.y]))).toEqual(
        sorted((hand.curves ?? []).map((curve) => inTicks(curve.slice(0, 4)))),
      );
      for (const [at, line] of curves.entries()) {
        const radius = lengthOf(worked, hand.curves?.[at]?.[4] ?? 0);
        expect(Math.abs((piece.curves[line.curve ?? 0]?.radius ?? 0) - radius)).toBeLessThan(1);
      }
      expect(piece.roomMm3 / roomMm3(worked, hand.room)).toBeCloseTo(1, 4);
    }
  });
});
