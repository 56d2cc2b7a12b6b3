import { describe, expect, it } from 'vitest';
import { checkClosingPath, checkGeometry, closingNotFollowed } from '../../../src/core/checks';
import { checkItemRoom } from '../../../src/core/checks/check-item-room';
import { leastSquares } from '../../../src/core/fold/closing/least-squares';
import { layNet } from '../../../src/core/net';
import type { BoxStyle, PieceSpec } from '../../../src/core/styles';
import { gableTop } from '../../../src/core/styles/boxes/gable-top';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { pillowPack } from '../../../src/core/styles/boxes/pillow-pack';
import { reverseTuck } from '../../../src/core/styles/boxes/reverse-tuck';
import { straightTuck } from '../../../src/core/styles/boxes/straight-tuck';
import { ticks } from '../../../src/core/units/ticks';
import { boxOf, sayIt, withPanel, withPiece } from './variant';

const hits = (style: BoxStyle, sizes: Readonly<Record<string, string>> = {}) =>
  checkClosingPath(boxOf(style, sizes)).map(sayIt);

describe('the path of a tuck', () => {
  it('slips in behind the front where the lid is one caliper short', () => {
    expect(hits(straightTuck)).toEqual([]);
    expect(closingNotFollowed(boxOf(straightTuck))).toEqual([]);
  });

  it('meets the dust flaps where the lid ends 1/4 in before the front', () => {
    const short = withPanel(straightTuck, 'box', 'topLid', { size: ['lidWidth', 'lidDepth - 1/4 in'] });
    const long = withPanel(short, 'box', 'topTuck', { size: ['lidWidth', 'depth'] });
    expect(hits(long).join()).toMatch(/dust and the top tuck hit each other/);
  });

  it('meets the wall where the lid is 1/2 in wider than the box', () => {
    const wide = withPanel(straightTuck, 'box', 'topLid', { size: ['width + 1/2 in', 'lidDepth'] });
    expect(hits(wide).join()).toMatch(/the left and the top lid hit each other/);
  });
});

describe('the path of a tuck between a header and square dust flaps', () => {
  const DEPTH = 47;
  // 2 × 0.35 mm + 1/64 in on the next whole millimeter, and 0.35 mm + 1/16 in on the next
  const [LID, GAP] = [DEPTH - 2, 2];

  const hung = (tuck: number) => {
    const sizes = { width: 134, depth: DEPTH, height: 144, tuck };
    return layNet(straightTuck, {
      sizes: Object.fromEntries(Object.entries(sizes).map(([name, mm]) => [name, ticks(320 * mm)])),
      options: { hangTab: 'front', dustEnds: 'square' },
      caliperUm: 350,
      mark: ticks(320),
    });
  };

  /**
   * Seen from the side, as lines: at how many of all lid angles no tuck of this length stays behind the header and, where it is below the rim,
   * in the gap before the dust flaps. Lid and tuck as two sticks, nothing of the core.
   */
  const noWay = (tuck: number): number => {
    const degrees = (angle: number) => (angle * Math.PI) / 180;
    const goes = (lid: number, lean: number): boolean => {
      const [x, y] = [LID * Math.cos(degrees(lid)), LID * Math.sin(degrees(lid))];
      const down = tuck * Math.cos(degrees(lean));
      const atRim = x + y * Math.tan(degrees(lean));
      return x + tuck * Math.sin(degrees(lean)) <= DEPTH && (down <= y || atRim >= DEPTH - GAP);
    };
    const lids = Array.from({ length: 89 }, (_, at) => at + 1);
    return lids.filter(
      (lid) => !Array.from({ length: 900 }, (_, at) => at / 10).some((lean) => goes(lid, lean)),
    ).length;
  };

  it('134 × 47 × 144 mm with a tuck of 23 mm: two sticks find a way at every angle of the lid, and so does the box', () => {
    expect(noWay(23)).toBe(0);
    expect(checkClosingPath(hung(23))).toEqual([]);
  });

  it('a tuck of 34 mm, past the limit, has no way for the sticks and none for the box', () => {
    expect(noWay(34)).toBeGreaterThan(0);
    expect(checkClosingPath(hung(34)).map(sayIt).join()).toMatch(/top tuck.*hit each other/);
  });
});

describe('the path of a loop', () => {
  it('gussets of a gable deeper than wide run into each other on the way', () => {
    expect(hits(gableTop)).toEqual([]);
    expect(hits(gableTop, { width: '1 1/2 in', depth: '2 1/4 in' }).join()).toMatch(/hit each other/);
  });

  it('no gusset has to bend', () => {
    expect(closingNotFollowed(boxOf(gableTop))).toEqual([]);
  });

  it('finds where two circles meet: (3, 4) on radius 5 about the origin and radius √20 about (5, 0)', () => {
    const [x = 0, y = 0] = leastSquares([2, 2], ([u = 0, v = 0]) => [
      Math.hypot(u, v) - 5,
      Math.hypot(u - 5, v) - Math.sqrt(20),
    ]);
    expect([x, y].map((n) => Number(n.toFixed(6)))).toEqual([3, 4]);
  });
});

describe('the path of what bends', () => {
  /** A pillow pack closed in another order, perhaps with another panel. */
  const closedBy = (
    order: (closing: PieceSpec['closing']) => PieceSpec['closing'],
    more: PieceSpec['panels'] = {},
  ): BoxStyle =>
    withPiece(pillowPack, 'pack', ({ panels, closing }) => ({
      panels: { ...panels, ...more },
      closing: order(closing),
    }));

  it('a pillow bulges without stretch; how its ends spring in is not followed, and said', () => {
    for (const sizes of [{}, { width: '10 in', height: '14 in', rise: '2 in' }]) {
      expect(hits(pillowPack, sizes)).toEqual([]);
      expect(closingNotFollowed(boxOf(pillowPack, sizes))).toEqual([
        ['backRight', 'backLeft'],
        ['frontRight', 'frontLeft'],
      ]);
    }
  });

  it('the ends run through the other face where they are pushed in before the pack bulges', () => {
    const early = closedBy((acts) => [...acts.slice(0, 3), ...acts.slice(4), ...acts.slice(3, 4)]);
    expect(checkGeometry(early, boxOf(early))).toEqual([]);
    expect(hits(early).join()).toMatch(
      /When the front, back, and tab fold, the front and the back right hit each other/,
    );
  });

  it('a strip that stands free in the full pack runs into the other face while it bulges', () => {
    const strip = { role: 'wall', size: ['height/2', 'rise'], at: 'rise/2', on: 'tab.up', fold: 90 } as const;
    const stands = { do: 'fold', panels: ['strip'] } as const;
    const stiff = closedBy((acts) => [...acts.slice(0, 3), stands, ...acts.slice(3)], { strip });
    expect(checkGeometry(stiff, boxOf(stiff))).toEqual([]);
    expect(hits(stiff).join()).toMatch(/When the front, back, and tab fold, the back and the strip/);
  });
});

describe('an item in thick card', () => {
  it('lies in the trade box as large as it says, and not 1/16 in wider', () => {
    expect(checkItemRoom(boxOf(openTop))).toEqual([]);
    const boast: BoxStyle = { ...openTop, inside: ['width + 1/16 in', 'depth - t', 'height - 7/2 t'] };
    expect(checkItemRoom(boxOf(boast)).map(({ code }) => code)).toEqual(['inside-less-than-told']);
  });

  it('needs the layers of the floor taken off: as high as the wall it does not fit in card .5 mm thick', () => {
    const boast: BoxStyle = { ...straightTuck, inside: ['width - t', 'depth - lidShort - t', 'height'] };
    expect(checkItemRoom(boxOf(boast, {}, 500)).map(({ code }) => code)).toEqual(['inside-less-than-told']);
  });

  it('between two tucks on opposite walls has one caliper’s mark less than between two on one wall', () => {
    const [straight, reverse] = [boxOf(straightTuck), boxOf(reverseTuck)];
    expect(straight.inside.depth - reverse.inside.depth).toBe(reverse.values['lidShort']);
    const boast: BoxStyle = { ...reverseTuck, inside: straightTuck.inside };
    // lidShort comes up to a whole 1/16 in, far more than two calipers of light card give back
    expect(checkItemRoom(boxOf(boast, {}, 200)).map(({ code }) => code)).toEqual(['inside-less-than-told']);
  });
});
