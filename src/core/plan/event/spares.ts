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

/** Spares make up for boxes that do not close only where more than half do: below that more would be spoiled than given. */
export const canMakeUp = (closes: number): boolean => closes > 50;

/** Of 100 batches, those in which enough boxes close. source: our choice */
export const BATCHES = 95;

/**
 * The fewest boxes of which enough close in 95 of 100 batches, when `closes` of 100 boxes do and each by itself: 40 at 96 are 44. Until the
 * last box that is needed closes, the number that do not is spread as a negative binomial says; its terms are summed by their logarithms,
 * since the first is nothing for a computer where thousands are ordered.
 */
export function beginFor(ordered: number, closes: number): number {
  const [good, bad] = [closes / 100, 1 - closes / 100];
  let term = ordered * Math.log(good);
  let enough = Math.exp(term);
  let lost = 0;
  while (enough < BATCHES / 100 - 1e-12) {
    lost++;
    term += Math.log(((ordered - 1 + lost) / lost) * bad);
    enough += Math.exp(term);
  }
  return ordered + lost;
}

/**
 * Spares for so many, boxes or kits of so many boxes: the largest of the percentage rounded up, the least number, and what the acts spoil one on the other. What does not
 * close stands in for the percentage where the share that closes is known and spares can make up for the rest.
 */
function sparesFor(
  ordered: number,
  { percent, atLeast, byAct = [] }: SparesRule,
  closes: number | null,
  perKit = 1,
): number {
  const spoiled =
    addSpoilage(
      ordered,
      byAct.map((act) => act.percent),
    ) - ordered;
  const share =
    closes !== null && canMakeUp(closes)
      ? ceilDiv(beginFor(ordered * perKit, closes) - ordered * perKit, perKit)
      : ceilDiv(ordered * percent, 100);
  return Math.max(atLeast, share, spoiled);
}

/**
 * Boxes to make for so many ordered: 40 at 10 % is 44. The rule is common practice, no source; integers throughout. `closes` of 100 boxes
 * close at the maker's accuracy, if spares go by that.
 */
export function addSpares(ordered: number, rule: SparesRule, closes: number | null = null): MakingCount {
  const spares = sparesFor(ordered, rule, closes);
  const practice = rule.practice ?? 0;
  return { ordered, spares, practice, making: ordered + spares + practice, perKit: null };
}

/** The same for a class: spares are whole kits of so many boxes. */
export function addSpareKits(
  kits: number,
  perKit: number,
  rule: SparesRule,
  closes: number | null = null,
): MakingCount {
  const ordered = kits * perKit;
  const spares = sparesFor(kits, rule, closes, perKit) * perKit;
  const practice = rule.practice ?? 0;
  return { ordered, spares, practice, making: ordered + spares + practice, perKit };
}
