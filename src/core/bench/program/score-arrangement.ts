import type { Ticks } from '../../units/ticks';
import type { Quarters } from '../equal/card-lie';
import type { ScoreStop } from './score-order';

const permute = (lies: readonly Quarters[]): readonly (readonly Quarters[])[] =>
  lies.length < 2
    ? [lies]
    : lies.flatMap((lie) => permute(lies.filter((other) => other !== lie)).map((rest) => [lie, ...rest]));

const known = new Map<string, readonly (readonly Quarters[])[]>();

/** Every order in which some lies can be visited, at most 24; rising ones first. */
export function ordersOf(lies: readonly Quarters[]): readonly (readonly Quarters[])[] {
  const key = lies.join();
  const orders = known.get(key) ?? permute(lies);
  known.set(key, orders);
  return orders;
}

const rising = (one: ScoreStop, other: ScoreStop): number => one.at - other.at;

/** Everything in one lie, then turn; a distance shared with the next lie comes last, so that the fence can stay. */
export function arrangeByLie(stops: readonly ScoreStop[], lies: readonly Quarters[]): readonly ScoreStop[] {
  const order: ScoreStop[] = [];
  lies.forEach((lie, i) => {
    const here = stops.filter((stop) => stop.quarters === lie).sort(rising);
    const next = stops.filter((stop) => stop.quarters === lies[i + 1]);
    const fence = order.at(-1)?.at;
    const first = here.filter((stop) => stop.at === fence);
    const rest = here.filter((stop) => stop.at !== fence);
    const last = rest.filter((stop) => next.some((other) => other.at === stop.at)).slice(0, 1);
    order.push(...first, ...rest.filter((stop) => !last.includes(stop)), ...last);
  });
  return order;
}

/** Set the fence once for a distance and turn the card; distances that serve most edges first. */
export function arrangeBySetting(stops: readonly ScoreStop[]): readonly ScoreStop[] {
  const groups = new Map<Ticks, ScoreStop[]>();
  for (const stop of stops) {
    const group = groups.get(stop.at);
    if (group) group.push(stop);
    else groups.set(stop.at, [stop]);
  }
  const order: ScoreStop[] = [];
  let lie: Quarters = 0;
  const turnsTo = (stop: ScoreStop): number => (stop.quarters - lie + 4) % 4;
  for (const group of [...groups.values()].sort(mostEdgesFirst)) {
    if (group.length > 1) group.sort((one, other) => turnsTo(one) - turnsTo(other));
    order.push(...group);
    lie = order.at(-1)?.quarters ?? lie;
  }
  return order;
}

const mostEdgesFirst = (one: readonly ScoreStop[], other: readonly ScoreStop[]): number =>
  other.length - one.length || (one[0]?.at ?? 0) - (other[0]?.at ?? 0);
