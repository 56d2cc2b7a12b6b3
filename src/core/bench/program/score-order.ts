import type { Ticks } from '../../units/ticks';
import { LIES, type Quarters } from '../equal/card-lie';
import type { BenchTool } from '../types';
import { HANDLING } from './handling-cost';
import { LIE_SETS, PAIRS_IN, pairBit, ROUNDS } from './lie-sets';
import { arrangeByLie, arrangeBySetting, ordersOf } from './score-arrangement';

/** One score as it can be made: the card turned so far from how it lies, the fence at this distance. */
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

/** Up to this many scores that could share a distance every choice is tried. source: our choice, 2^12 choices take milliseconds. */
const TRY_ALL_UP_TO = 12;

/**
 * Which edge each score is measured from, and in what order: least sum of rough marks, fence settings, turns and edges that face each other,
 * among all choices of edges in two orders of work (turn seldom, or set the fence seldom). With more than twelve scores that could share a distance, each of those
 * takes its easiest edge.
 */
export function orderScores(
  options: readonly (readonly ScoreStop[])[],
  tool: BenchTool,
  turnsAfter: TurnsAfter,
): ScoreOrder {
  const search = new OrderSearch(options, tool, turnsAfter);
  for (const lies of LIE_SETS) search.within(lies);
  return search.best;
}

/** Tries choices set of lies by set of lies, and leaves off where a bound says that nothing better can come. */
class OrderSearch {
  best: ScoreOrder = { stops: [], cost: Number.POSITIVE_INFINITY };
  readonly #options: readonly (readonly ScoreStop[])[];
  readonly #setting: number;
  readonly #turn: number;
  readonly #opposite: number;
  /** By lie. */
  readonly #turnsAfter: readonly number[];
  /** Scores that could share a distance with another; the rest need a setting of their own whatever is chosen. */
  readonly #kin: ReadonlySet<number>;
  /** Every distance, rising, with what the choice at hand does there. */
  readonly #places: readonly Place[];
  readonly #placeAt: ReadonlyMap<Ticks, Place>;

  constructor(options: readonly (readonly ScoreStop[])[], tool: BenchTool, turnsAfter: TurnsAfter) {
    this.#options = options;
    this.#setting = HANDLING[tool.kind].setting;
    this.#turn = HANDLING[tool.kind].turn;
    this.#opposite = HANDLING[tool.kind].opposite;
    this.#turnsAfter = LIES.map(turnsAfter);
    const kin = kinOf(options);
    this.#kin = kin.length > TRY_ALL_UP_TO ? new Set() : new Set(kin);
    const distances = new Set(options.flatMap((choices) => choices.map(({ at }) => at)));
    this.#places = [...distances].sort((one, other) => one - other).map((at) => ({ at, scores: 0, lies: 0 }));
    this.#placeAt = new Map(this.#places.map((place) => [place.at, place]));
    if (options.length === 0) this.best = { stops: [], cost: 0 };
  }

  /** All choices that use only these lies. A score without kin takes the easier of its edges. */
  within(lies: readonly Quarters[]): void {
    const allowed = this.#options.map((choices) => choices.filter((stop) => lies.includes(stop.quarters)));
    if (allowed.some((choices) => choices.length === 0)) return;
    const ahead = allowed.map((choices) => Math.min(...choices.map((stop) => stop.cost)));
    const choices = allowed.map((stops, i) => (this.#kin.has(i) ? stops : [easiest(stops)]));
    // Kin first to last, so that the bound sees shared distances early.
    const order = choices
      .map((_, i) => i)
      .sort((a, b) => Number(this.#kin.has(b)) - Number(this.#kin.has(a)) || a - b);
    const turns = lies.length - (lies.includes(0) ? 1 : 0);
    const after = Math.min(...lies.map((lie) => this.#turnsAfter[lie] ?? 0));
    const kin = order.filter((i) => this.#kin.has(i)).length;
    const orders = ordersOf(lies);
    const chosen: ScoreStop[] = [];
    const choose = (step: number, settings: number, rough: number): void => {
      const alone = choices.length - Math.max(kin, step);
      if (rough + this.#handling(settings + alone, turns) + this.#turn * after >= this.best.cost) return;
      const i = order[step];
      if (i === undefined) {
        this.#judge(chosen, orders, settings, rough + this.#opposite * oppositePairs(chosen));
        return;
      }
      for (const stop of choices[i] ?? []) {
        const place = this.#placeAt.get(stop.at);
        if (place === undefined) continue;
        const { scores, lies: before } = place;
        place.scores = scores + 1;
        place.lies = before | (1 << stop.quarters);
        chosen[i] = stop;
        choose(step + 1, settings + (scores === 0 ? 1 : 0), rough - (ahead[i] ?? 0) + stop.cost);
        place.scores = scores;
        place.lies = before;
      }
    };
    choose(
      0,
      0,
      ahead.reduce((sum, cost) => sum + cost, 0),
    );
  }

  /** From one score to the next the fence is set or the card is turned, so few settings cost turns and few turns cost settings. */
  #handling(settings: number, turns: number): number {
    const count = this.#options.length;
    return this.#setting <= this.#turn
      ? this.#setting * Math.max(settings, count - turns) + this.#turn * turns
      : this.#setting * settings + this.#turn * Math.max(turns, count - settings);
  }

  /** Of equals the first is kept: rising lies. Only what beats the best so far is laid out. `rough` is all but settings and turns. */
  #judge(
    chosen: readonly ScoreStop[],
    orders: readonly (readonly Quarters[])[],
    settings: number,
    rough: number,
  ): void {
    let shared = 0;
    for (const { lies } of this.#places) shared |= PAIRS_IN[lies] ?? 0;
    for (const order of orders) {
      const first = order[0] ?? 0;
      let lie = first;
      // Lie by lie the fence can stay only where the card is turned, and the next lie has the same distance.
      let stays = 0;
      for (const next of order) {
        if (shared & pairBit(next, lie)) stays++;
        lie = next;
      }
      const turns = order.length - (first === 0 ? 1 : 0) + (this.#turnsAfter[lie] ?? 0);
      const sets = Math.max(settings, chosen.length - stays);
      if (rough + this.#setting * sets + this.#turn * turns < this.best.cost)
        this.#keep(arrangeByLie(chosen, order));
    }
    const turns = this.#setting > 0 ? this.#turnsBySetting() : Number.POSITIVE_INFINITY;
    if (rough + this.#setting * settings + this.#turn * turns < this.best.cost)
      this.#keep(arrangeBySetting(chosen));
  }

  /** Turns in all where each distance is set once, those with most scores first: as `arrangeBySetting` lays it out. */
  #turnsBySetting(): number {
    let turns = 0;
    let lie = 0;
    let size = 0;
    for (const { scores } of this.#places) if (scores > size) size = scores;
    for (; size > 0; size--)
      for (const { scores, lies } of this.#places) {
        if (scores !== size) continue;
        const round = ROUNDS[4 * lies + lie];
        if (round === undefined) continue;
        turns += round.turns;
        lie = round.last;
      }
    return turns + (this.#turnsAfter[lie] ?? 0);
  }

  #keep(stops: readonly ScoreStop[]): void {
    let cost = 0;
    let lie: Quarters = 0;
    let fence: Ticks | null = null;
    for (const stop of stops) {
      cost += stop.cost + (stop.quarters === lie ? 0 : this.#turn) + (stop.at === fence ? 0 : this.#setting);
      lie = stop.quarters;
      fence = stop.at;
    }
    cost += this.#turn * (this.#turnsAfter[lie] ?? 0);
    cost += this.#opposite * oppositePairs(stops);
    if (cost < this.best.cost) this.best = { stops, cost };
  }
}

/** A distance from the fence: how many of the chosen scores have it, and in which lies, a bit each. */
interface Place {
  readonly at: Ticks;
  scores: number;
  lies: number;
}

/**
 * How many pairs of edges that face each other are both measured from. One setting all round, as a tray is scored, does not count: its walls
 * come out alike, and what is wrong with the blank falls into its floor.
 */
function oppositePairs(stops: readonly ScoreStop[]): number {
  let pairs = 0;
  for (const lie of [0, 1]) {
    const [near, far] = [stops.find(isIn(lie)), stops.find(isIn(lie + 2))];
    if (near && far && stops.some((stop) => stop.quarters % 2 === lie && stop.at !== near.at)) pairs++;
  }
  return pairs;
}

const isIn =
  (lie: number) =>
  ({ quarters }: ScoreStop): boolean =>
    quarters === lie;

const easiest = (stops: readonly ScoreStop[]): ScoreStop =>
  stops.reduce((best, stop) => (stop.cost < best.cost ? stop : best));

/** The scores, by index, that have a distance in common with another score. */
function kinOf(options: readonly (readonly ScoreStop[])[]): readonly number[] {
  const users = new Map<Ticks, Set<number>>();
  options.forEach((choices, i) => {
    for (const { at } of choices) users.set(at, (users.get(at) ?? new Set()).add(i));
  });
  return options.flatMap((choices, i) =>
    choices.some(({ at }) => (users.get(at)?.size ?? 0) > 1) ? [i] : [],
  );
}
