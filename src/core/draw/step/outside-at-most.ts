import { layersInside } from '../../fold/layers';
import { type Extent, outsideExtent, solidFigure } from '../../fold/solid-figure';
import type { BoxNet } from '../../net/types';
import { roundToTick, TICKS_PER_MM, type Ticks, ticks } from '../../units';

/**
 * What a closed box takes up, card and all, rounded up: width, depth and height as its room is named. For what must go round or over it;
 * what a guest would measure is `outsideSize` of `core/dress`. Never too small: on every side as many layers
 * are counted as lie on one another anywhere, and a box of several pieces is as large as the largest of them each way, with card round it.
 */
export function outsideAtMost(net: BoxNet, caliperUm: number): [Ticks, Ticks, Ticks] {
  const { pieces } = net;
  const caliperMm = caliperUm / 1000;
  const sizes = pieces.map((piece) => {
    const { low, high } = outsideExtent(piece, solidFigure(piece, caliperUm));
    const layers = Math.max(0, ...[...layersInside(piece).values()].map(Math.abs));
    return [0, 1, 2].map((axis) => (high[axis] ?? 0) - (low[axis] ?? 0) + 2 * layers * caliperMm);
  });
  const round = pieces.length > 1 ? 2 * caliperMm : 0;
  const side = (axis: number) =>
    ticks(Math.ceil((Math.max(...sizes.map((each) => each[axis] ?? 0)) + round) * TICKS_PER_MM - 1e-6));
  return namedAs(net, [side(0), side(1), side(2)]);
}

/** What a folded piece takes up, named as the room of its box is: width, depth and height. */
export const outsideOf = (net: BoxNet, { low, high }: Extent): [Ticks, Ticks, Ticks] => {
  const side = (axis: 0 | 1 | 2) => roundToTick((high[axis] - low[axis]) * TICKS_PER_MM);
  return namedAs(net, [side(0), side(1), side(2)]);
};

/**
 * A box may stand on another side than its room is named by: the order of sides is taken in which outside and room are most alike. A pocket
 * is as deep as what fills it, with card on both sides.
 */
function namedAs({ inside: { width, depth, height }, pocket, caliperUm }: BoxNet, stands: Sides): Sides {
  const room = [width, depth, height];
  const off = (order: (typeof ORDERS)[number]) =>
    order.reduce<number>((sum, axis, i) => sum + Math.abs(stands[axis] - (room[i] ?? 0)), 0);
  const [a, b, c] = ORDERS.reduce((best, order) => (off(order) < off(best) ? order : best));
  const filled = pocket ? ticks(depth + Math.ceil((2 * caliperUm * TICKS_PER_MM) / 1000)) : stands[b];
  return [stands[a], ticks(Math.max(stands[b], filled)), stands[c]];
}

type Sides = [Ticks, Ticks, Ticks];

const ORDERS = [
  [0, 1, 2],
  [1, 0, 2],
  [0, 2, 1],
  [2, 1, 0],
  [1, 2, 0],
  [2, 0, 1],
] as const;
