import { describe, expect, test } from 'vitest';
import { insidesMeet } from '../../src/core/yield/interlock/check-nest';
import { callDesk } from './call-desk';

const strip = (items: object[], h: number) => JSON.stringify([{ name: 'own', kind: 'irregular-strip-packing', strip: { h }, items }]); // biome-ignore format: one file

interface Answer {
  readonly value: number;
  readonly lowerBound: number;
  readonly proven: boolean;
  readonly density: number;
  readonly layouts: readonly [
    { readonly parts: readonly { item: number; x: number; y: number; rotation: number }[] },
  ];
}
const L: [number, number][] = [[0, 0], [3, 0], [3, 1], [1, 1], [1, 2], [0, 2], [0, 0]]; // biome-ignore format: one outline

describe('outlines on a strip', () => {
  test('two of four squares fill a rectangle without a gap, placed by turning and moving the outline given', async () => {
    // An L of four squares and its half turn make 4 × 2; three such pairs on a strip 4 high are 6 long, all of it covered.
    const items = [{ demand: 6, allowedOrientations: [0, 90, 180, 270], polygon: L }];
    const { printed } = await callDesk(['yield', 'own.json', '--seconds', '2'], {
      'own.json': strip(items, 4),
    });
    const answer = JSON.parse(printed) as Answer;
    expect(answer).toMatchObject({ value: 6, lowerBound: 6, proven: true, density: 100 });
    const laid = answer.layouts[0].parts.map(({ x, y, rotation }) =>
      L.slice(1).map(([a, b]) => {
        const [across, up] = rotation === 0 ? [a, b] : rotation === 90 ? [-b, a] : rotation === 180 ? [-a, -b] : [b, -a]; // biome-ignore format: one row
        return [across + x, up + y] as const;
      }),
    );
    expect(laid.length).toBe(6);
    for (const [at, ring] of laid.entries()) {
      expect(ring.every(([x, y]) => x >= 0 && x <= 6 && y >= 0 && y <= 4)).toBe(true);
      for (const other of laid.slice(at + 1)) expect(insidesMeet(ring, other)).toBe(false);
    }
  });

  test('higher than the strip have no answer', async () => {
    const { printed } = await callDesk(['yield', 'own.json'], { 'own.json': strip([{ polygon: L }], 1) });
    expect(JSON.parse(printed)).toMatchObject({ value: null, proven: false, layouts: [] });
  });
});
