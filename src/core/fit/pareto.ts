/**
 * The rows that no other row beats or equals in every score (less is better), in their first order; of equal rows the first stays.
 * A row can only be beaten by one that comes before it when sorted by score, so each is held against the few kept so far.
 */
export function paretoBy<T>(rows: readonly T[], scores: (row: T) => readonly number[]): T[] {
  const ranked = rows
    .map((row, order) => ({ row, order, score: scores(row) }))
    .sort((a, b) => compare(a.score, b.score) || a.order - b.order);
  const kept: typeof ranked = [];
  for (const mine of ranked)
    if (!kept.some(({ score }) => score.every((value, i) => value <= (mine.score[i] ?? 0)))) kept.push(mine);
  return kept.sort((a, b) => a.order - b.order).map(({ row }) => row);
}

function compare(a: readonly number[], b: readonly number[]): number {
  const differs = a.findIndex((value, i) => value !== b[i]);
  return differs < 0 ? 0 : (a[differs] ?? 0) - (b[differs] ?? 0);
}
