import { expect, it } from 'vitest';
import { layNet } from '../../../src/core/net';
import { cardHolder } from '../../../src/core/styles/boxes/card-holder';

/** A gift card: ISO/IEC 7810 ID-1, 85.60 × 53.98 × 0.76 mm (from memory). */
const CARD_MM = { long: 85.6, high: 53.98 };

it('takes a gift card through two slots, each end behind the liner', () => {
  const [holder] = layNet(cardHolder, { sizes: {}, caliperUm: 305 }).pieces;
  const liner = holder?.faces.find(({ panel }) => panel === 'liner');
  const slots = (liner?.holes ?? []).map((ring) => ({
    left: Math.min(...ring.map(({ x }) => x)) / 320,
    right: Math.max(...ring.map(({ x }) => x)) / 320,
    low: Math.min(...ring.map(({ y }) => y)) / 320,
    high: Math.max(...ring.map(({ y }) => y)) / 320,
  }));
  const [first, last] = slots.sort((one, other) => one.left - other.left);
  if (first === undefined || last === undefined) throw new Error('two slots');
  // by hand, inches: the liner starts at 6 1/2, the middle of the card lies 1/2 + 2 1/8 / 2 = 1 9/16 beyond, at 8 1/16;
  // a slot is 2 1/8 + 1/8 long; its middle is 1/2 + 3/8 = 7/8 from each side of 4 3/8, and it is 1/8 wide
  const middle = 8.0625 * 25.4;
  for (const slot of [first, last]) {
    expect(slot.low).toBeCloseTo(middle - 1.125 * 25.4, 2);
    expect(slot.high).toBeCloseTo(middle + 1.125 * 25.4, 2);
    expect(slot.high - slot.low).toBeGreaterThan(CARD_MM.high);
  }
  expect(first.left).toBeCloseTo(0.8125 * 25.4, 2);
  expect(last.right).toBeCloseTo((4.375 - 0.8125) * 25.4, 2);
  // however it lies, the card is held by both ends
  const across = last.left - first.right;
  expect((CARD_MM.long - across) / 2).toBeGreaterThan(6);
});
