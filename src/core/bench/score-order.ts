import type { Ticks } from '../units/ticks';
import type { Quarters } from './card-lie';
import { HANDLING } from './handling-cost';
import type { BenchTool } from './types';

/** One score as it can be made: the card turned this way, the fence at this distance. */
export interface ScoreStop {
  readonly quarters: Quarters;
  readonly at: Ticks;
  /** Which score, by index, and how hard its mark is to find. */
  readonly run: number;
  readonly cost: number;
}

/** Scores in the order they are made, and what the whole costs. */
export interface ScoreOrder {
  readonly stops: readonly ScoreStop[];
  readonly cost: number;
}

/** Turns that are still to come when scoring ends with the card lying this way. */
export type TurnsAfter = (quarters: Quarters) => number;

/** Up to this many scores every choice of edges is tried. source: our choice, 2^12 choices take milliseconds. */
const TRY_ALL_UP_TO = 12;

/**
 * Which edge each score is measured from, and in what order: least sum of rough marks, fence settings and turns, among all choices of edges
 * in two orders of work (turn seldom, or set the fence seldom). Beyond twelve scores each takes its own best edge, lie by lie.
 */
export function orderScores(
  options: readonly (readonly ScoreStop[])[],
  tool: BenchTool,
  turnsAfter: TurnsAfter,
): ScoreOrder {
  const weights = HANDLING[tool.kind];
  const judge = (stops: readonly ScoreStop[]): ScoreOrder => cheaperOrder(stops, weights, turnsAfter);
  const easiest = options.map((choices) => least(choices, (stop) => stop.cost));
  let best = judge(easiest);
  if (options.length > TRY_ALL_UP_TO) {
    for (const stops of [...likeLies(options), likeSettings(options)]) best = cheaper(best, judge(stops));
    return best;
  }
  const costAhead = options.map((_, i) => easiest.slice(i).reduce((sum, stop) => sum + stop.cost, 0));
  const choose = (i: number, chosen: readonly ScoreStop[], spent: number): void => {
    const atLeast = spent + (costAhead[i] ?? 0) + leastHandling(chosen, weights);
    if (atLeast >= best.cost) return;
    if (i === options.length) best = cheaper(best, judge(chosen));
    for (const stop of options[i] ?? []) choose(i + 1, [...chosen, stop], spent + stop.cost);
  };
  choose(0, [], 0);
  return best;
}

interface Weights {
  readonly setting: number;
  readonly turn: number;
}

/** No order of work handles less: each distance is set once, each lie is turned to once from the first. */
function leastHandling(stops: readonly ScoreStop[], { setting, turn }: Weights): number {
  const settings = new Set(stops.map((stop) => stop.at)).size;
  const lies = new Set(stops.map((stop) => stop.quarters)).add(0).size;
  return settings * setting + (lies - 1) * turn;
}

const cheaper = (one: ScoreOrder, other: ScoreOrder): ScoreOrder => (other.cost < one.cost ? other : one);

function cheaperOrder(stops: readonly ScoreStop[], weights: Weights, turnsAfter: TurnsAfter): ScoreOrder {
  const priced = (order: readonly ScoreStop[]): ScoreOrder => ({
    stops: order,
    cost: priceOf(order, weights, turnsAfter),
  });
  // Of equals the first is kept: the card as it lies, then quarter turn by quarter turn.
  const orders = [...liesInTurn(stops).map((lies) => lieByLie(stops, lies)), settingBySetting(stops)];
  return orders.map(priced).reduce(cheaper);
}

function priceOf(order: readonly ScoreStop[], { setting, turn }: Weights, turnsAfter: TurnsAfter): number {
  let price = 0;
  let lie: Quarters = 0;
  let fence: Ticks | null = null;
  for (const stop of order) {
    price += stop.cost + (stop.quarters === lie ? 0 : turn) + (stop.at === fence ? 0 : setting);
    lie = stop.quarters;
    fence = stop.at;
  }
  return price + turn * turnsAfter(lie);
}

/** Every order in which the used lies can be visited; at most 24. */
function liesInTurn(stops: readonly ScoreStop[]): readonly (readonly Quarters[])[] {
  const used = ([0, 1, 2, 3] as const).filter((lie) => stops.some((stop) => stop.quarters === lie));
  return permute(used);
}

const permute = (lies: readonly Quarters[]): readonly (readonly Quarters[])[] =>
  lies.length < 2
    ? [lies]
    : lies.flatMap((lie) => permute(lies.filter((other) => other !== lie)).map((rest) => [lie, ...rest]));

/** Everything in one lie, then turn; a distance shared with the next lie comes last, so that the fence can stay. */
function lieByLie(stops: readonly ScoreStop[], lies: readonly Quarters[]): readonly ScoreStop[] {
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

const rising = (one: ScoreStop, other: ScoreStop): number => one.at - other.at;

/** Set the fence once for a distance and turn the card; distances that serve most edges first. */
function settingBySetting(stops: readonly ScoreStop[]): readonly ScoreStop[] {
  const groups = new Map<Ticks, ScoreStop[]>();
  for (const stop of stops) groups.set(stop.at, [...(groups.get(stop.at) ?? []), stop]);
  const order: ScoreStop[] = [];
  for (const group of [...groups.values()].sort((a, b) => b.length - a.length || rising(a[0]!, b[0]!))) {
    const lie = order.at(-1)?.quarters ?? 0;
    const turnsTo = (stop: ScoreStop): number => (stop.quarters - lie + 4) % 4;
    order.push(...group.sort((a, b) => turnsTo(a) - turnsTo(b)));
  }
  return order;
}

const least = <T>(things: readonly T[], cost: (thing: T) => number): T =>
  things.reduce((best, thing) => (cost(thing) < cost(best) ? thing : best));

/** For every choice of lies: each score in the easiest of them that it has. */
function likeLies(options: readonly (readonly ScoreStop[])[]): readonly (readonly ScoreStop[])[] {
  return Array.from({ length: 15 }, (_, i) => i + 1).map((mask) =>
    options.map((choices) => {
      const allowed = choices.filter((stop) => (mask >> stop.quarters) % 2 === 1);
      return least(allowed.length > 0 ? allowed : choices, (stop) => stop.cost);
    }),
  );
}

/** Each score at the distance that most of the others could share. */
function likeSettings(options: readonly (readonly ScoreStop[])[]): readonly ScoreStop[] {
  const uses = new Map<Ticks, number>();
  for (const stop of options.flat()) uses.set(stop.at, (uses.get(stop.at) ?? 0) + 1);
  return options.map((choices) => least(choices, (stop) => stop.cost - 10 * (uses.get(stop.at) ?? 0)));
}
