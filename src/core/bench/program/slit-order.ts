import { LIES, type Quarters } from '../equal/card-lie';
import type { Segment } from '../equal/line-stretches';
import type { TurnsAfter } from './score-order';
import type { SlitWay, SlitWork } from './slit-ways';

/** Slits cut while the card lies one way. */
interface SlitGroup {
  readonly quarters: Quarters;
  readonly ops: readonly SlitWay['op'][];
}

export interface SlitOrder {
  readonly slanted: readonly Segment[];
  /** Turns that cutting all slits takes when the card lies this way before. */
  readonly turnsFrom: TurnsAfter;
  /** All slits, in groups, beginning with the card as it lies. */
  readonly from: (quarters: Quarters) => readonly SlitGroup[];
}

/** Fewest lies in which every slit can be cut: all sixteen sets of lies are tried. */
export function orderSlits({ ways, slanted }: SlitWork): SlitOrder {
  const sets = Array.from({ length: 16 }, (_, mask) => LIES.filter((lie) => (mask >> lie) % 2 === 1));
  const enough = sets.filter((set) => ways.every((each) => each.some((way) => set.includes(way.quarters))));
  const turns = (set: readonly Quarters[], from: Quarters): number =>
    set.length - (set.includes(from) ? 1 : 0);
  const fewest = (from: Quarters): readonly Quarters[] =>
    enough.reduce<readonly Quarters[]>(
      (best, set) => (turns(set, from) < turns(best, from) ? set : best),
      LIES,
    );
  return {
    slanted,
    turnsFrom: (from) => turns(fewest(from), from),
    from: (from) => groupSlits(ways, fewest(from), from),
  };
}

function groupSlits(ways: SlitWork['ways'], lies: readonly Quarters[], from: Quarters): readonly SlitGroup[] {
  const order = [...lies].sort((one, other) => ((one - from + 4) % 4) - ((other - from + 4) % 4));
  const left = new Set(ways);
  return order.map((quarters) => {
    const ops: SlitWay['op'][] = [];
    for (const each of left) {
      const way = each.find((one) => one.quarters === quarters);
      if (!way) continue;
      ops.push(way.op);
      left.delete(each);
    }
    return { quarters, ops: ops.sort((one, other) => one.at - other.at) };
  });
}
