import { expect, test } from 'vitest';
import { ticks } from '../../../src/core/units/ticks';
import { fillBestSheet, type WorthPart } from '../../../src/core/yield';

/** Sixty sizes on a sheet so fine that the table of every size of piece would take minutes. */
const sheet = { across: ticks(12_000), up: ticks(9_000) };
const parts = Array.from({ length: 60 }, (_, i): WorthPart => {
  const [across, up] = [301 + ((i * 7919) % 1500), 401 + ((i * 104_729) % 1300)];
  return { id: String(i), across: ticks(across), up: ticks(up), worth: across * up, most: null };
});

test('a sheet too fine for the time allowed is filled on a coarser grid, and its bound is by area', () => {
  const start = performance.now();
  const { worth, bound, layout } = fillBestSheet(sheet, parts, true, {
    seconds: 0.2,
    now: () => performance.now(),
  });
  expect(performance.now() - start).toBeLessThan(2000); // Eight seconds before.
  expect(bound).toBe(sheet.across * sheet.up);
  expect(worth).toBeGreaterThan(0.97 * bound);
  expect(worth).toBe(layout.parts.reduce((sum, { across, up }) => sum + across * up, 0));
  for (const [at, one] of layout.parts.entries()) {
    expect(one.x >= 0 && one.y >= 0 && one.x + one.across <= sheet.across && one.y + one.up <= sheet.up).toBe(
      true,
    );
    for (const other of layout.parts.slice(at + 1)) {
      const apart = one.x + one.across <= other.x || other.x + other.across <= one.x || one.y + one.up <= other.y || other.y + other.up <= one.y; // biome-ignore format: one row
      expect(apart).toBe(true);
    }
  }
});
