import { fillRolls } from '../buying/rolls';
import type { EventPlan } from '../event/types';

/** Rolls that the events of a season save, by supply: what one event leaves of a roll serves the next. Never fewer than none. */
export function rollsSaved(plans: readonly Pick<EventPlan, 'rolls'>[]): ReadonlyMap<string, number> {
  const all = plans.flatMap(({ rolls }) => rolls);
  const ids = [...new Set(all.map(({ supplyId }) => supplyId))];
  return new Map(
    ids.map((id) => {
      const own = all.filter(({ supplyId }) => supplyId === id);
      const pieces = own.flatMap(({ rolls: { fills } }) =>
        fills.flatMap(({ rolls, pieces: each }) =>
          each.map(({ length, count }) => ({ length, count: count * rolls })),
        ),
      );
      const apart = own.reduce((sum, { rolls }) => sum + rolls.rolls, 0);
      const together = fillRolls(pieces, own[0]!.usable).rolls;
      return [id, Math.max(0, apart - together)] as const;
    }),
  );
}
