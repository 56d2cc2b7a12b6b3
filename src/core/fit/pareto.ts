/** The rows that no other row beats or equals in every score (less is better); of equal rows the first stays. */
export function paretoBy<T>(rows: readonly T[], scores: (row: T) => readonly number[]): T[] {
  const scored = rows.map((row) => ({ row, score: scores(row) }));
  const beats = (a: readonly number[], b: readonly number[]) => a.every((value, i) => value <= (b[i] ?? 0));
  const same = (a: readonly number[], b: readonly number[]) => a.every((value, i) => value === b[i]);
  return scored
    .filter(
      (mine, i) =>
        !scored.some(
          (other, j) =>
            i !== j && beats(other.score, mine.score) && (!same(other.score, mine.score) || j < i),
        ),
    )
    .map(({ row }) => row);
}
