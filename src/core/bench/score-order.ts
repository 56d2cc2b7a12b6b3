import type { Ticks } from '../units/ticks';
import { LIES, type Quarters } from './card-lie';
import { HANDLING } from './handling-cost';
import { arrangeByLie, arrangeBySetting, ordersOf } from './score-arrangement';
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

/** Up to this many scores that could share a distance every choice is tried. source: our choice, 2^12 choices take milliseconds. */
const TRY_ALL_UP_TO = 12;

/**
 * Which edge each score is measured from, and in what order: least sum of rough marks, fence settings and turns, among all choices of edges
 * in two orders of work (turn seldom, or set the fence seldom). With more than twelve scores that could share a distance, each of those
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

/** Every set of lies, the smaller first. */
const LIE_SETS = Array.from({ length: 15 }, (_, i) => i + 1)
  .map((mask) => LIES.filter((lie) => (mask >> lie) % 2 === 1))
  .sort((one, other) => one.length - other.length);

/** Tries choices set of lies by set of lies, and leaves off where a bound says that nothing better can come. */
class OrderSearch {
  best: ScoreOrder = { stops: [], cost: Number.POSITIVE_INFINITY };
  readonly #options: readonly (readonly ScoreStop[])[];
  readonly #setting: number;
  readonly #turn: number;
  /** By lie. */
  readonly #turnsAfter: readonly number[];
  /** Scores that could share a distance with another; the rest need a setting of their own whatever is chosen. */
  readonly #kin: ReadonlySet<number>;

  constructor(options: readonly (readonly ScoreStop[])[], tool: BenchTool, turnsAfter: TurnsAfter) {
    this.#options = options;
    this.#setting = HANDLING[tool.kind].setting;
    this.#turn = HANDLING[tool.kind].turn;
    this.#turnsAfter = LIES.map(turnsAfter);
    const kin = kinOf(options);
    this.#kin = kin.length > TRY_ALL_UP_TO ? new Set() : new Set(kin);
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
    const chosen: ScoreStop[] = [];
    const users = new Map<Ticks, number>();
    const choose = (place: number, settings: number, rough: number): void => {
      const alone = choices.length - Math.max(kin, place);
      if (rough + this.#handling(settings + alone, turns) + this.#turn * after >= this.best.cost) return;
      const i = order[place];
      if (i === undefined) {
        this.#judge(chosen, lies, settings, rough);
        return;
      }
      for (const stop of choices[i] ?? []) {
        const before = users.get(stop.at) ?? 0;
        users.set(stop.at, before + 1);
        chosen[i] = stop;
        choose(place + 1, settings + (before === 0 ? 1 : 0), rough - (ahead[i] ?? 0) + stop.cost);
        users.set(stop.at, before);
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

  /** Of equals the first is kept: rising lies. */
  #judge(chosen: readonly ScoreStop[], lies: readonly Quarters[], settings: number, rough: number): void {
    const shares = sharedBetween(chosen);
    for (const order of ordersOf(lies)) {
      const [first = 0, last = 0] = [order[0], order.at(-1)];
      const turns = lies.length - (first === 0 ? 1 : 0) + (this.#turnsAfter[last] ?? 0);
      // Lie by lie the fence can stay only where the card is turned, and the next lie has the same distance.
      const stays = order.filter((lie, i) => i > 0 && shares[4 * lie + (order[i - 1] ?? 0)]).length;
      const sets = Math.max(settings, chosen.length - stays);
      if (rough + this.#setting * sets + this.#turn * turns < this.best.cost)
        this.#keep(arrangeByLie(chosen, order));
    }
    if (this.#setting > 0) this.#keep(arrangeBySetting(chosen));
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
    if (cost < this.best.cost) this.best = { stops, cost };
  }
}

/** For each pair of lies, `4 * one + other`, whether a distance is used in both. */
function sharedBetween(chosen: readonly ScoreStop[]): readonly boolean[] {
  const shared = new Array<boolean>(16).fill(false);
  for (const one of chosen)
    for (const other of chosen)
      if (one.at === other.at && one.quarters !== other.quarters)
        shared[4 * one.quarters + other.quarters] = true;
  return shared;
}

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
