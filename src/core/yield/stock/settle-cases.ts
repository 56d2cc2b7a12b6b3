import type { Pattern } from '../pattern/pattern';
import { diveCases } from './case-dive';
import { type Case, mixWithin, type PatternList } from './case-program';
import { type CaseNode, searchCases } from './case-search';
import type { Effort } from './effort';
import type { PatternChoice } from './every-pattern';
import type { PatternUse } from './pattern-plan';
import { closeByRounding } from './rounding-cuts';

/** A proof that a plan needs more than so many sheets, by looking at every choice of patterns. */
export interface CasesBound {
  readonly sheets: number;
  readonly points: readonly number[];
  readonly most: number;
  readonly patterns: readonly Pattern[];
  readonly root: CaseNode;
}

export interface CasesAnswer {
  readonly uses: readonly PatternUse[] | null;
  readonly bound: CasesBound | null;
}

const wholeCase = (demands: readonly number[]): Case => ({ left: demands, fixed: 0, caps: new Map() });

/** Dives again and again among these patterns for a plan on at most `most` sheets. */
export function tryDives(
  demands: readonly number[],
  patterns: readonly Pattern[],
  list: PatternList,
  most: number,
  tries: number,
  effort: Effort,
  sway: () => number,
): PatternUse[] | null {
  const pool = new Set<number>();
  const start = mixWithin(wholeCase(demands), list, pool, effort);
  for (let i = 0; i < tries && !effort.isSpent(); i++) {
    const hold = i % 2 === 0 ? 0 : 0.5;
    const plan = diveCases(demands, start, list, most, pool, effort, sway, hold);
    if (plan !== null) return usesOf(plan, patterns);
  }
  return null;
}

/** Whether the demands go on at most `most` sheets of these patterns: a plan, a proof that they do not, or neither if effort or `nodes` ran out. */
export function settleCases(
  demands: readonly number[],
  choice: PatternChoice,
  most: number,
  effort: Effort,
  sway: () => number,
  nodes: number,
): CasesAnswer {
  const { list, patterns, points } = choice;
  const dived = tryDives(demands, patterns, list, most, 12, effort, sway);
  if (dived !== null) return { uses: dived, bound: null };
  const rounded = choice.complete ? closeByRounding(demands, list, most, effort.share(0.5), sway) : null;
  if (rounded !== null)
    return { uses: null, bound: { sheets: most + 1, points, most: choice.most, patterns, root: rounded } };
  const { plan, proof } = searchCases(demands, list, most, effort, sway, nodes);
  if (plan !== null) return { uses: usesOf(plan, patterns), bound: null };
  const bound =
    proof === null || !choice.complete
      ? null
      : { sheets: most + 1, points, most: choice.most, patterns, root: proof };
  if (bound !== null) return { uses: null, bound };
  return { uses: tryDives(demands, patterns, list, most, 100, effort, sway), bound: null };
}

const usesOf = (plan: ReadonlyMap<number, number>, patterns: readonly Pattern[]): PatternUse[] =>
  [...plan].filter(([, sheets]) => sheets > 0).map(([at, sheets]) => ({ pattern: patterns[at]!, sheets }));
