/** `unit`: the n-th piece takes T₁ nᵇ (the usual one). `average`: the mean of the first n takes T₁ nᵇ. They differ much at forty. */
export type LearningTheory = 'unit' | 'average';

/** b = log₂(rate): each doubling takes `ratePercent` of the time before. source: Wright 1936, as told on a space agency's learning-curve page. */
const exponent = (ratePercent: number): number => Math.log2(ratePercent / 100);

/** Time of the n-th piece as a multiple of the first, unit theory. */
export const unitTime = (n: number, ratePercent: number): number => n ** exponent(ratePercent);

/** Time of `count` pieces as a multiple of the first. At 100 % nothing is learned and it is `count`. */
export function learnedTotal(count: number, ratePercent: number, theory: LearningTheory = 'unit'): number {
  if (theory === 'average') return count <= 0 ? 0 : count * unitTime(count, ratePercent);
  let total = 0;
  for (let n = 1; n <= count; n++) total += unitTime(n, ratePercent);
  return total;
}
