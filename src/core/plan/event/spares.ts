import type { Spares } from '../../rows';

/** What spares go by; the event's own rule. */
export type SparesRule = Spares;

export interface MakingCount {
  readonly ordered: number;
  readonly spares: number;
  /** Pieces to practice on, or to show in a class, beyond the spares. */
  readonly practice: number;
  readonly making: number;
  /** Boxes to one kit of a class; null when the order is for favors. */
  readonly perKit: number | null;
}

/** a / b rounded up, both whole and positive: a product like 100 × 1.1 in decimals would come out one too many. */
export const ceilDiv = (a: number, b: number): number => Math.floor((a + b - 1) / b);

/**
 * Pieces to start with when every act spoils some: ordered / ((1 − p₁)(1 − p₂)…), rounded up, in exact integers.
 * Percentages are whole and below 100.
 */
export function addSpoilage(ordered: number, percents: readonly number[]): number {
  const hundreds = 100n ** BigInt(percents.length);
  const kept = percents.reduce((product, percent) => product * BigInt(100 - percent), 1n);
  return Number((BigInt(ordered) * hundreds + kept - 1n) / kept);
}

/** Spares for so many: the largest of the percentage rounded up, the least number, and what the acts spoil one on the other. */
function sparesFor(ordered: number, { percent, atLeast, byAct = [] }: SparesRule): number {
  const spoiled =
    addSpoilage(
      ordered,
      byAct.map((act) => act.percent),
    ) - ordered;
  return Math.max(atLeast, ceilDiv(ordered * percent, 100), spoiled);
}

/** Boxes to make for so many ordered: 40 at 10 % is 44. The rule is common practice, no source; integers throughout. */
export function addSpares(ordered: number, rule: SparesRule): MakingCount {
  const spares = sparesFor(ordered, rule);
  const practice = rule.practice ?? 0;
  return { ordered, spares, practice, making: ordered + spares + practice, perKit: null };
}

/** The same for a class: spares are whole kits of so many boxes. */
export function addSpareKits(kits: number, perKit: number, rule: SparesRule): MakingCount {
  const ordered = kits * perKit;
  const spares = sparesFor(kits, rule) * perKit;
  const practice = rule.practice ?? 0;
  return { ordered, spares, practice, making: ordered + spares + practice, perKit };
}
