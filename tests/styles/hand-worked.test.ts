import { describe, expect, it } from 'vitest';
import { layNet, linesOf, type PieceNet } from '../../src/core/net';
import { STYLES } from '../../src/core/styles';
import { lengthOf, readFixture, roomMm3, sizingOf } from './fixture';

const straight = (piece: PieceNet, kind: 'score' | 'slit') =>
  linesOf(piece)
    .filter((line) => line.kind === kind && line.curve === null)
    .map(({ from, to }) => [from.x, from.y, to.x, to.y] as number[]);

type Numbers = readonly number[];

const turned = ([a = 0, b = 0, c = 0, d = 0]: Numbers): Numbers => [c, d, a, b];
/** Irrational corners are worked to five places, and hang on corners rounded before: two ticks (.006 mm) either way is the same line. */
const same = (p: Numbers, q: Numbers): boolean => p.every((value, at) => Math.abs(value - (q[at] ?? 0)) <= 2);

/** Lines on one side that the other side does not have, whichever way they run. */
const missing = (lines: readonly Numbers[], among: readonly Numbers[]): readonly Numbers[] =>
  lines.filter((line) => !among.some((other) => same(line, other) || same(turned(line), other)));

function expectSameLines(lines: readonly Numbers[], hand: readonly Numbers[]): void {
  expect({ missing: missing(hand, lines), extra: missing(lines, hand), count: lines.length }).toEqual({
    missing: [],
    extra: [],
    count: hand.length,
  });
}

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
      const blank = [piece.blank.across, piece.blank.up];
      expect({ blank, same: same(blank, inTicks(hand.blank)) }).toEqual({ blank, same: true });
      expectSameLines(straight(piece, 'score'), hand.scores.map(inTicks));
      expectSameLines(straight(piece, 'slit'), hand.slits.map(inTicks));
      const curves = linesOf(piece).filter(({ kind, curve }) => kind === 'score' && curve !== null);
      expectSameLines(
        curves.map(({ from, to }) => [from.x, from.y, to.x, to.y]),
        (hand.curves ?? []).map((curve) => inTicks(curve.slice(0, 4))),
      );
      for (const [at, line] of curves.entries()) {
        const radius = lengthOf(worked, hand.curves?.[at]?.[4] ?? 0);
        expect(Math.abs((piece.curves[line.curve ?? 0]?.radius ?? 0) - radius)).toBeLessThan(1);
      }
      if (hand.room === 0) expect(piece.roomMm3).toBe(0);
      else expect(piece.roomMm3 / roomMm3(worked, hand.room)).toBeCloseTo(1, 4);
    }
  });
});
