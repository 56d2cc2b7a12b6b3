import { describe, expect, it } from 'vitest';
import { type Block, combineBlocks } from '../../../src/core/fit/combine-blocks';
import { gridCuboids, standings } from '../../../src/core/fit/cuboid-grids';

const locked = (...sizes: [number, number, number][]): Block[] => sizes.map((size) => ({ options: [size] }));

describe('unlike things in one box', () => {
  it('finds the 3 × 3 × 3 nest of three bars that no straight cut can give', () => {
    // Hand-worked: bars 2×3×1, 1×2×3, 3×1×2 lie round a corner of a cube of side 3; every halving cut needs more.
    const found = combineBlocks(locked([2, 3, 1], [1, 2, 3], [3, 1, 2]));
    expect(found.map((c) => c.size)).toContainEqual([3, 3, 3]);
    expect(found.every((c) => c.exact)).toBe(true);
  });

  it('puts two unlike cuboids side by side on each axis and no other way', () => {
    // Hand-worked: 2×1×1 and 1×1×3 give 3×1×3, 2×2×3 and 2×1×4.
    const sizes = combineBlocks(locked([2, 1, 1], [1, 1, 3])).map((c) => c.size.join('×'));
    expect(sizes.sort()).toEqual(['2×1×4', '2×2×3', '3×1×3']);
  });

  it('no two placed blocks overlap, for four exact and for seven by cuts', () => {
    const things = [
      [3, 2, 1],
      [4, 1, 1],
      [2, 2, 2],
      [1, 1, 5],
      [3, 3, 1],
      [2, 1, 1],
      [1, 2, 4],
    ] as [number, number, number][];
    for (const count of [4, 7]) {
      const blocks = things
        .slice(0, count)
        .map((size): Block => ({ options: standings(size, false).slice(0, 3) }));
      for (const { size, placed, exact } of combineBlocks(blocks)) {
        expect(exact).toBe(count === 4);
        const solids = placed.map(({ option, at }, b) => ({
          at,
          size: blocks[b]?.options[option] ?? [0, 0, 0],
        }));
        for (const [i, a] of solids.entries()) {
          for (const k of [0, 1, 2] as const) expect(a.at[k] + a.size[k]).toBeLessThanOrEqual(size[k] + 1e-9);
          for (const b of solids.slice(0, i))
            expect(
              ([0, 1, 2] as const).some(
                (k) => a.at[k] + a.size[k] <= b.at[k] + 1e-9 || b.at[k] + b.size[k] <= a.at[k] + 1e-9,
              ),
            ).toBe(true);
        }
      }
    }
  });
});

describe('equal cuboids in a grid', () => {
  it('two boxed decks 92 × 65 × 19 mm lie flat, side by side or end to end', () => {
    // Worked from the deck alone: doubling one side gives 92×65×38, 92×130×19 and 184×65×19 (common practice deck size, from memory).
    const sizes = gridCuboids('deck', [92, 65, 19], 2, false).map(({ size }) =>
      [...size].sort((a, b) => a - b).join('×'),
    );
    for (const expected of ['38×65×92', '19×92×130', '19×65×184']) expect(sizes).toContain(expected);
  });
});
