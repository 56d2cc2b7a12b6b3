import { describe, expect, test } from 'vitest';
import { openingOf, passesOpening, protrusionsOf } from '../../../src/core/fit';
import { foldTextOf, layNet, ownBoxOf } from '../../../src/core/net';
import { type BoxStyle, OWN_NET, styleById } from '../../../src/core/styles';
import { inches } from '../../../src/core/units';

const style = (id: string) => styleById(id) ?? expect.fail(id);
const open = style('open-top');
/** 3 1/2 × 1 1/2 × 3 in from score to score, card of 0.3 mm: 0.3 mm off the width and the depth inside. */
const sizing = {
  sizes: { width: inches(3, 1, 2), depth: inches(1, 1, 2), height: inches(3) },
  caliperUm: 300,
};
const laid = (one: BoxStyle) => layNet(one, sizing);
const lying = (size: readonly [number, number, number]) =>
  ({ size }) as unknown as Parameters<typeof passesOpening>[0];
const candle = (aboveRimMm: number, heightMm: number) => ({
  items: [
    {
      id: 'candle',
      name: 'Candle',
      size: { shape: 'cylinder' as const, diameterMm: 30, heightMm, lies: 'standing' as const },
      count: 1,
      wrapMm: 0,
      aboveRimMm,
      thisWayUp: true,
      fragile: false,
      care: [],
      gramsEach: null,
    },
  ],
  clearanceMm: null,
});

describe('what goes in through the opening', () => {
  test('from above, with the caliper off both ways: 88.9 − 0.3 by 38.1 − 0.3 mm, of 320 ticks each', () => {
    const { way, clear, flaps } = openingOf(open, laid(open));
    expect([way, ...clear, flaps]).toEqual(['from above', 28_352, 12_096, 0]);
  });

  test('dust flaps in the way take two layers of card off the width', () => {
    expect(openingOf(style('straight-tuck'), laid(style('straight-tuck'))).flaps).toBe(2 * 96);
  });

  test('exactly as large as the opening passes; a tick larger does not', () => {
    const opening = openingOf(open, laid(open));
    expect(passesOpening(lying([88.6, 37.8, 200]), opening)).toBe(true);
    expect(passesOpening(lying([88.6 + 1 / 320, 37.8, 200]), opening)).toBe(false);
    expect(passesOpening(lying([88.6, 37.8 + 1 / 320, 200]), opening)).toBe(false);
  });
});

describe('a net of the maker’s own', () => {
  test('opens as wide as the room inside it', () => {
    const net = ownBoxOf(foldTextOf(laid(open), 'Own'), 300) ?? expect.fail('no net');
    expect(openingOf(OWN_NET, net)).toEqual(openingOf(open, laid(open)));
  });
});

describe('what stands out above the rim', () => {
  // Half of it below the rim: common practice, no source. The box is a little under 3 in, 76.2 mm, deep inside.
  test.each([
    [140, []],
    [160, ['rim-too-low']],
  ])('may, while half of its %i mm is held', (heightMm, codes) => {
    expect(protrusionsOf(candle(20, heightMm), open, laid(open)).map(({ code }) => code)).toEqual(codes);
  });

  test('may not where something closes the top, and nothing is said of what stays below', () => {
    expect(
      protrusionsOf(candle(20, 90), style('lid-flap'), laid(style('lid-flap'))).map(({ code }) => code),
    ).toEqual(['closed-top']);
    expect(protrusionsOf(candle(0, 500), style('lid-flap'), laid(style('lid-flap')))).toEqual([]);
  });
});
