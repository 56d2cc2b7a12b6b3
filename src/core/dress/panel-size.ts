import type { BoxNet } from '../net/types';
import { type Ticks, ticks } from '../units';

export interface FlatSize {
  readonly across: Ticks;
  readonly up: Ticks;
}

/** The rectangle a panel fills in the flat net, score to score; null if no piece has a panel of that name. */
export function panelSize(net: BoxNet, panel: string): FlatSize | null {
  const corners = net.pieces
    .flatMap(({ faces }) => faces)
    .filter((face) => face.panel === panel)
    .flatMap(({ ring }) => ring);
  if (corners.length === 0) return null;
  const span = (values: readonly number[]): Ticks => ticks(Math.max(...values) - Math.min(...values));
  return { across: span(corners.map(({ x }) => x)), up: span(corners.map(({ y }) => y)) };
}
