import { diveCases } from './case-dive';
import { type Case, type CaseMixture, mixWithin, type PatternList, usefulCopies } from './case-program';
import type { Effort } from './effort';
import type { RoundedPoints } from './rounding-cuts';

/**
 * Why no choice among the listed patterns will do: by points, or because a pattern is used at most so often or more often, and neither
 * will do. Patterns are named by their place in the list.
 */
export type CaseNode =
  | { readonly points: readonly number[]; readonly rows?: RoundedPoints['rows'] }
  | { readonly pattern: number; readonly atMost: number; readonly less: CaseNode; readonly more: CaseNode };

export interface CaseAnswer {
  /** Sheets of each pattern of a plan that is short enough, or null. */
  readonly plan: ReadonlyMap<number, number> | null;
  /** Why there is none; null if there is one or effort ran out. */
  readonly proof: CaseNode | null;
}

const SCALE = 1e10; // Points for a price of 1 sheet; sums stay below 2^53 up to 100,000 sheets.

/**
 * Whether the demands can be cut on at most `most` sheets with these patterns: branch and bound over how often each pattern is used, deepest
 * first, every branch that is closed with whole-number points. `nodes` is how many cases are looked at. Source: Land & Doig, Econometrica 28 (1960) 497-520.
 */
export function searchCases(
  demands: readonly number[],
  list: PatternList,
  most: number,
  effort: Effort,
  sway: () => number,
  nodes: number,
): CaseAnswer {
  const pool = new Set<number>();
  const used = new Map<number, number>();
  const state: { plan: ReadonlyMap<number, number> | null; nodes: number; stopped: boolean } = {
    plan: null,
    nodes: 0,
    stopped: false,
  };

  const hasPlan = (): boolean => state.plan !== null;

  const visit = (now: Case): CaseNode | null => {
    if (state.stopped || state.plan !== null) return null;
    if (effort.isSpent() || ++state.nodes > nodes) {
      state.stopped = true;
      return null;
    }
    const room = most - now.fixed;
    const mixture = mixWithin(now, list, pool, effort);
    if (!mixture.settled) {
      state.stopped = true;
      return null;
    }
    if (mixture.sheets > room + 1e-6) {
      const points = pointsOf(mixture.prices, now, list, room);
      return points === null ? null : { points }; // Null: too close to tell in whole numbers of this scale.
    }
    const open = mostOpen(mixture);
    if (open === null) {
      state.plan = addUses(used, mixture.uses.map(({ pattern, sheets }) => [pattern, Math.round(sheets)] as const)); // biome-ignore format: one line
      return null;
    }
    const dived = diveCases(now.left, mixture, list, room, pool, effort, sway, state.nodes % 2 === 0 ? 0.5 : 0); // biome-ignore format: one line
    if (dived !== null) {
      state.plan = addUses(used, [...dived]);
      return null;
    }
    const atMost = Math.floor(open.sheets + 1e-6);
    const more = visit(takeSheets(now, open.pattern, atMost + 1, list, used));
    if (hasPlan()) return null;
    restore(used, open.pattern, atMost + 1);
    const less = visit({ ...now, caps: new Map(now.caps).set(open.pattern, atMost) });
    return less === null || more === null ? null : { pattern: open.pattern, atMost, less, more };
  };

  const proof = visit({ left: demands, fixed: 0, caps: new Map() });
  return { plan: state.plan, proof: hasPlan() ? null : proof };
}

/** The use in the mixture to decide on: the largest fraction; null if all are whole. */
function mostOpen({ uses }: CaseMixture): { pattern: number; sheets: number } | null {
  let best: { pattern: number; sheets: number } | null = null;
  let largest = -1;
  for (const use of uses) {
    const part = use.sheets - Math.floor(use.sheets + 1e-6);
    if (part < 1e-6) continue;
    if (part <= largest) continue;
    largest = part;
    best = use;
  }
  return best;
}

function takeSheets(
  now: Case,
  pattern: number,
  times: number,
  list: PatternList,
  used: Map<number, number>,
): Case {
  used.set(pattern, (used.get(pattern) ?? 0) + times);
  const left = now.left.map((count, item) => Math.max(0, count - times * list.counts[pattern * list.items + item]!)); // biome-ignore format: one line
  const cap = now.caps.get(pattern);
  const caps = cap === undefined ? now.caps : new Map(now.caps).set(pattern, cap - times);
  return { left, fixed: now.fixed + times, caps };
}

function restore(used: Map<number, number>, pattern: number, times: number): void {
  const left = (used.get(pattern) ?? 0) - times;
  if (left > 0) used.set(pattern, left);
  else used.delete(pattern);
}

function addUses(
  used: ReadonlyMap<number, number>,
  more: readonly (readonly [number, number])[],
): ReadonlyMap<number, number> {
  const all = new Map(used);
  for (const [pattern, sheets] of more) all.set(pattern, (all.get(pattern) ?? 0) + sheets);
  return all;
}

/** Whole points that close a case, or null if rounding takes too much. */
function pointsOf(
  prices: readonly number[],
  { left, caps }: Case,
  list: PatternList,
  room: number,
): number[] | null {
  const points = prices.map((price) => Math.floor(price * SCALE + 1e-3));
  const worth = (pattern: number): number => {
    let sum = 0;
    for (let item = 0; item < list.items; item++)
      sum += points[item]! * usefulCopies(list, pattern, item, left);
    return sum;
  };
  let most = 0;
  for (let pattern = 0; pattern < list.size; pattern++)
    if (!caps.has(pattern)) most = Math.max(most, worth(pattern));
  let total = left.reduce((sum, count, item) => sum + count * points[item]!, 0);
  for (const [pattern, times] of caps) total -= times * Math.max(0, worth(pattern) - most);
  return total > most * room ? points : null;
}
