import type { NamedSide } from '../../core/net/lay-piece';
import { roundToTick, type Ticks } from '../../core/units';

/** How long an edge of a panel is as drawn. */
export const distanceOf = (sides: readonly NamedSide[], panel: string, edge: string): Ticks =>
  roundToTick(
    sides.reduce(
      (sum, { panel: of, edge: named, a, b }) =>
        of === panel && named === edge ? sum + Math.hypot(b.x - a.x, b.y - a.y) : sum,
      0,
    ),
  );
