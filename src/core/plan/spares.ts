/** How many more than ordered: a percentage rounded up to whole boxes, never fewer than `atLeast`. */
export interface SparesRule {
  readonly percent: number;
  readonly atLeast: number;
}

export interface MakingCount {
  readonly ordered: number;
  readonly spares: number;
  readonly making: number;
}

/** a / b rounded up, both whole and positive: a product like 100 × 1.1 in decimals would come out one too many. */
export const ceilDiv = (a: number, b: number): number => Math.floor((a + b - 1) / b);

/** Boxes to make for so many ordered: 40 at 10 % is 44. source: common practice, no source, for the rule; integers throughout. */
export function addSpares(ordered: number, rule: SparesRule): MakingCount {
  const spares = Math.max(rule.atLeast, ceilDiv(ordered * rule.percent, 100));
  return { ordered, spares, making: ordered + spares };
}

/**
 * Pieces to start with when every operation spoils some: ordered / ((1 − p₁)(1 − p₂)…), rounded up, in exact integers.
 * Percentages are whole and below 100.
 */
export function addSpoilage(ordered: number, percents: readonly number[]): number {
  const hundreds = 100n ** BigInt(percents.length);
  const kept = percents.reduce((product, percent) => product * BigInt(100 - percent), 1n);
  return Number((BigInt(ordered) * hundreds + kept - 1n) / kept);
}
