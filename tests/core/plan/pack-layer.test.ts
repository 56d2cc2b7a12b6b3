import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostInLayer, packLayer } from '../../../src/core/plan/carry/pack-layer';
import { SEED } from '../../seed';

// The package names its CommonJS build as a module, which Node does not load: its other build is taken by its path.
const MODULE: string = 'maxrects-packer/dist/maxrects-packer.mjs';
const { MaxRectsPacker } = (await import(MODULE)) as typeof import('maxrects-packer');

/** The most a × b boxes on a small floor of whole squares, by trying every place for each: shares nothing with the packing. */
function mostByTrying(across: number, up: number, a: number, b: number): number {
  const taken = new Uint8Array(across * up);
  let most = 0;
  const fits = (x: number, y: number, w: number, h: number) => {
    if (x + w > across || y + h > up) return false;
    for (let j = y; j < y + h; j++) for (let i = x; i < x + w; i++) if (taken[j * across + i]) return false;
    return true;
  };
  const set = (x: number, y: number, w: number, h: number, to: number) => {
    for (let j = y; j < y + h; j++) taken.fill(to, j * across + x, j * across + x + w);
  };
  const lies =
    a === b
      ? [[a, b]]
      : [
          [a, b],
          [b, a],
        ];
  const tryFrom = (cell: number, count: number, free: number): void => {
    if (count + Math.floor(free / (a * b)) <= most) return;
    if (cell === across * up) {
      most = Math.max(most, count);
      return;
    }
    const [x, y] = [cell % across, Math.floor(cell / across)];
    for (const [w = 0, h = 0] of lies)
      if (fits(x, y, w, h)) {
        set(x, y, w, h, 1);
        tryFrom(cell + 1, count + 1, free - w * h);
        set(x, y, w, h, 0);
      }
    tryFrom(cell + 1, count, free - (taken[cell] ? 0 : 1));
  };
  tryFrom(0, 0, across * up);
  return most;
}

const overlaps = (placed: ReturnType<typeof packLayer>) =>
  placed.some((a, i) =>
    placed.some(
      (b, j) => j > i && a.x < b.x + b.across && b.x < a.x + a.across && a.y < b.y + b.up && b.y < a.y + a.up,
    ),
  );

describe('one layer of boxes in a crate', () => {
  it('is a grid where a grid is best: 12 × 9 holds nine of 4 × 3', () => {
    expect(packLayer({ across: 12, up: 9 }, { across: 4, up: 3 })).toHaveLength(9);
  });

  it('mixes both ways: 5 × 5 with 3 × 2 holds four round a middle, where edge to edge goes only three', () => {
    // Edge to edge: two of 3 × 2 on a strip 3 wide, one turned beside them. Four of 3 × 2 go round one empty square: 4 × 6 + 1 = 25.
    const placed = packLayer({ across: 5, up: 5 }, { across: 3, up: 2 });
    expect(placed).toHaveLength(4);
    expect(overlaps(placed)).toBe(false);
  });

  it('holds exactly as many as trying every place does, on every floor up to 7 × 7 and box up to 4 × 3', () => {
    let compared = 0;
    for (let across = 1; across <= 7; across++)
      for (let up = 1; up <= across; up++)
        for (let a = 1; a <= 4; a++)
          for (let b = 1; b <= Math.min(a, 3); b++) {
            if (a * b < 2) continue;
            const placed = packLayer({ across, up }, { across: a, up: b });
            expect(placed.length, `${a} × ${b} on ${across} × ${up}`).toBe(mostByTrying(across, up, a, b));
            expect(mostInLayer({ across, up }, { across: a, up: b })).toBeGreaterThanOrEqual(placed.length);
            compared++;
          }
    expect(compared).toBeGreaterThan(200);
  });

  it('stays on the floor, never overlaps, and holds at least what maxrects-packer 2.7.4 (MIT) packs', () => {
    const size = (least: number, most: number) => fc.integer({ min: least, max: most });
    fc.assert(
      fc.property(size(100, 400), size(100, 400), size(35, 120), size(35, 120), (across, up, a, b) => {
        const placed = packLayer({ across, up }, { across: a, up: b });
        const most = mostInLayer({ across, up }, { across: a, up: b });
        expect(overlaps(placed)).toBe(false);
        for (const each of placed) {
          expect(Math.min(each.x, each.y)).toBeGreaterThanOrEqual(0);
          expect(each.x + each.across).toBeLessThanOrEqual(across);
          expect(each.y + each.up).toBeLessThanOrEqual(up);
        }
        expect(placed.length).toBeLessThanOrEqual(most);
        const packer = new MaxRectsPacker(across, up, 0, {
          smart: false,
          pot: false,
          square: false,
          allowRotation: true,
        });
        if (a <= Math.max(across, up) && b <= Math.max(across, up))
          packer.addArray(Array.from({ length: most }, () => ({ width: a, height: b, data: 0 }) as never));
        const theirs = packer.bins[0]?.rects.filter(({ oversized }) => !oversized).length ?? 0;
        expect(placed.length).toBeGreaterThanOrEqual(theirs);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});
