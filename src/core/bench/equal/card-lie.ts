import type { Blank, Point } from '../../net/types';
import { type Ticks, ticks } from '../../units/ticks';
import type { BenchPoint } from '../types';

export type Quarters = 0 | 1 | 2 | 3;
export const LIES = [0, 1, 2, 3] as const satisfies readonly Quarters[];

/** A place on the card in ticks; for drawing it need not be whole. */
export type CardPlace = readonly [x: number, y: number];

/**
 * How the card lies at the bench: quarter turns counter-clockwise from the net's own frame. `mirrored` when x runs the other way from the
 * net's, because the outside lies up or because the fence stands on the right.
 */
export interface Lie {
  readonly quarters: Quarters;
  readonly mirrored: boolean;
}

export const quartersOf = (turns: number): Quarters => (((turns % 4) + 4) % 4) as Quarters;

/** The card's size as it lies. */
export const sizeAsItLies = (blank: Blank, { quarters }: Lie): Blank =>
  quarters % 2 === 0 ? blank : { across: blank.up, up: blank.across };

/** A point of the net as the bench measures it. */
export function toBench(blank: Blank, lie: Lie, point: Point): BenchPoint {
  const [x, y] = placeAtBench(blank, lie, [point.x, point.y]);
  return at(x, y);
}

/** The same for any place on the card, whole ticks or not. */
export function placeAtBench(
  { across, up }: Blank,
  { quarters, mirrored }: Lie,
  [netX, y]: CardPlace,
): CardPlace {
  const x = mirrored ? across - netX : netX;
  switch (quarters) {
    case 0:
      return [x, y];
    case 1:
      return [up - y, x];
    case 2:
      return [across - x, up - y];
    case 3:
      return [y, across - x];
  }
}

/** A point measured at the bench, in the net's own frame. */
export function toNet(blank: Blank, { quarters, mirrored }: Lie, point: BenchPoint): Point {
  const { across, up } = blank;
  const [x, y] = unturn(across, up, quarters, point);
  return at(mirrored ? across - x : x, y);
}

function unturn(
  across: number,
  up: number,
  quarters: Quarters,
  { x, y }: BenchPoint,
): readonly [number, number] {
  switch (quarters) {
    case 0:
      return [x, y];
    case 1:
      return [y, up - x];
    case 2:
      return [across - x, up - y];
    case 3:
      return [across - y, x];
  }
}

const at = (x: number, y: number): Point => ({ x: ticks(x), y: ticks(y) });

/** The lie after turning; counter-clockwise as the bench measures. */
export const turned = (lie: Lie, quarters: number): Lie => ({
  ...lie,
  quarters: quartersOf(lie.quarters + quarters),
});

/** The lie after flipping the card left to right as it lies. */
export const flipped = ({ quarters, mirrored }: Lie): Lie => ({
  quarters: quartersOf(-quarters),
  mirrored: !mirrored,
});

/** A lie as the bench measures it and as eyes see it, each from the other: with the fence on the right, the bench measures in a mirror. */
export const asSeen = ({ quarters, mirrored }: Lie, fence: 'left' | 'right'): Lie =>
  fence === 'left' ? { quarters, mirrored } : { quarters: quartersOf(-quarters), mirrored: !mirrored };

/** A stretch of a line that stands upright as the card lies: its distance from the fence, and how far off the near edge it runs. */
export interface UprightStretch {
  readonly at: Ticks;
  readonly from: Ticks;
  readonly to: Ticks;
}

/** A segment of the net as an upright stretch; null if it does not stand upright in this lie. */
export function uprightIn(blank: Blank, lie: Lie, a: Point, b: Point): UprightStretch | null {
  const p = toBench(blank, lie, a);
  const q = toBench(blank, lie, b);
  if (p.x !== q.x) return null;
  const [from, to] = p.y < q.y ? [p.y, q.y] : [q.y, p.y];
  return { at: p.x, from, to };
}

/** The four ways a card can be turned; `mirrored` stays as it is. */
export const fourLies = (mirrored: boolean): readonly Lie[] =>
  LIES.map((quarters) => ({ quarters, mirrored }));
