import { afterAll, describe, expect, it } from 'vitest';
import type { PieceNet } from '../../src/core/net/types';
import { STYLES } from '../../src/core/styles';
import { toMm } from '../../src/core/units';
import { boxOf, inch, PAPERS, templateOf } from './printed-boxes';

/**
 * No way to lay a net on pages, turned by any angle, takes fewer than this many. Two bounds, from geometry alone: the card has so much area, and a
 * net that fits no page at any angle needs a second. The room of a page is taken too large rather than too small.
 */
type At = readonly [x: number, y: number];

/** Letter and A4 less margins of 10 mm, the bars, and the lines above and below. source: ISO 216 and ANSI for the sheets; the rest is what this app prints. */
const ROOM_MM = {
  letter: [
    [215.9 - 20, 279.4 - 20],
    [279.4 - 20, 215.9 - 20],
  ],
  a4: [
    [210 - 20, 297 - 20],
    [297 - 20, 210 - 20],
  ],
} as const;
const [BESIDE_MM, ABOVE_AND_BELOW_MM] = [8, 41];
const rooms = (paper: 'letter' | 'a4') =>
  ROOM_MM[paper].map(([wide, high]): At => [wide - BESIDE_MM, high - ABOVE_AND_BELOW_MM]);

const cornersOf = ({ faces }: PieceNet): At[] =>
  faces.flatMap(({ ring }) => ring.map(({ x, y }): At => [toMm(x), toMm(y)]));

const areaOf = ({ faces }: PieceNet): number =>
  faces.reduce((sum, { ring }) => {
    const twice = ring.reduce((all, { x, y }, i) => {
      const next = ring[(i + 1) % ring.length]!;
      return all + toMm(x) * toMm(next.y) - toMm(next.x) * toMm(y);
    }, 0);
    return sum + Math.abs(twice) / 2;
  }, 0);

const STEPS = 720;

/** Does the net fit a page at some angle? Between two angles tried no side shrinks by more than its longest reach times half a step. */
function mayFit(corners: readonly At[], room: At): boolean {
  const reach = Math.max(...corners.map(([x, y]) => Math.hypot(x - corners[0]![0], y - corners[0]![1]))) * 2;
  const slack = (reach * Math.PI) / STEPS;
  return Array.from({ length: STEPS }, (_, i) => (i * Math.PI) / STEPS).some((turn) => {
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const [across, up] = [corners.map(([x, y]) => x * c - y * s), corners.map(([x, y]) => x * s + y * c)];
    const span = (all: readonly number[]) => Math.max(...all) - Math.min(...all);
    return span(across) <= room[0] + slack && span(up) <= room[1] + slack;
  });
}

const leastPages = (piece: PieceNet, paper: 'letter' | 'a4'): number => {
  const corners = cornersOf(piece);
  const largest = Math.max(...rooms(paper).map(([wide, high]) => wide * high));
  const byArea = Math.ceil(areaOf(piece) / largest);
  return Math.max(byArea, rooms(paper).some((room) => mayFit(corners, room)) ? 1 : 2);
};

const found = { all: 0, fewest: 0, off: new Map<number, string[]>() };

describe('pages of a template against a bound that no layout beats', () => {
  it.each(STYLES.map((style) => [style.id, style] as const))('%s', (id, style) => {
    for (const paper of PAPERS)
      for (const piece of boxOf(style).pieces) {
        const { length } = templateOf(style, paper, { pieces: [piece], ruler: inch }).pages;
        const least = leastPages(piece, paper);
        expect(length).toBeGreaterThanOrEqual(least);
        // One more at most for a net on two or three pages; a net of a sheet and more is not looked at any closer.
        expect(length - least, `${id}, ${piece.label}, ${paper}`).toBeLessThanOrEqual(3);
        found.all++;
        if (length === least) found.fewest++;
        else found.off.set(length - least, [...(found.off.get(length - least) ?? []), `${id} ${paper}`]);
      }
  });

  it('knows a square of 100 mm from a strip of 400', () => {
    const [piece] = boxOf(STYLES[0]!).pieces;
    expect(leastPages(piece!, 'letter')).toBe(2);
    expect(mayFit([[0, 0], [100, 0], [100, 100], [0, 100]], [180, 200])).toBe(true); // biome-ignore format: one ring
    expect(mayFit([[0, 0], [400, 0], [400, 10], [0, 10]], [180, 200])).toBe(false); // biome-ignore format: one ring
  });

  afterAll(() => {
    const rest = [...found.off].map(([by, those]) => `at most ${by} more: ${those.join(', ')}`);
    console.info([`Templates on proven fewest pages: ${found.fewest} of ${found.all}`, ...rest].join('\n'));
  });
});
