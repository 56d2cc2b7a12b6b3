/** Rounds, and the step (degrees) by which slopes are taken. source: our choice; angles settle in three to six rounds */
const ROUNDS = 20;
const NUDGE = 1e-4;
/** Small enough to change no answer, large enough to hold what nothing else does. source: our choice */
const DAMPING = 1e-9;
const SETTLED = 1e-7; // degrees

/** Values near `start` at which the residuals are least in their squares: Gauss-Newton with slopes taken by nudging each value. */
export function leastSquares(
  start: readonly number[],
  residuals: (values: readonly number[]) => readonly number[],
): number[] {
  let values = [...start];
  for (let round = 0; round < ROUNDS; round++) {
    const here = residuals(values);
    const slopes = values.map((value, at) => {
      const nudged = [...values];
      nudged[at] = value + NUDGE;
      return residuals(nudged).map((r, k) => (r - (here[k] ?? 0)) / NUDGE);
    });
    const product = (p: readonly number[], q: readonly number[]) =>
      p.reduce((sum, x, k) => sum + x * (q[k] ?? 0), 0);
    const rows = slopes.map((p, i) => [
      ...slopes.map((q, j) => product(p, q) + (i === j ? DAMPING + 1e-6 * product(p, p) : 0)),
      -product(p, here),
    ]);
    const step = solve(rows);
    values = values.map((value, at) => value + Math.max(-10, Math.min(10, step[at] ?? 0)));
    if (Math.max(0, ...step.map(Math.abs)) < SETTLED) break;
  }
  return values;
}

/** Linear equations, each a row with its right side last, by elimination with the largest pivot. */
function solve(rows: number[][]): number[] {
  const n = rows.length;
  for (let at = 0; at < n; at++) {
    let best = at;
    for (let row = at + 1; row < n; row++)
      if (Math.abs(rows[row]?.[at] ?? 0) > Math.abs(rows[best]?.[at] ?? 0)) best = row;
    [rows[at], rows[best]] = [rows[best] ?? [], rows[at] ?? []];
    const pivot = rows[at] ?? [];
    for (let row = at + 1; row < n; row++) {
      const line = rows[row] ?? [];
      const times = (line[at] ?? 0) / (pivot[at] || 1);
      if (times !== 0) for (let k = at; k <= n; k++) line[k] = (line[k] ?? 0) - times * (pivot[k] ?? 0);
    }
  }
  const answer = new Array<number>(n).fill(0);
  for (let at = n - 1; at >= 0; at--) {
    const row = rows[at] ?? [];
    let rest = row[n] ?? 0;
    for (let k = at + 1; k < n; k++) rest -= (row[k] ?? 0) * (answer[k] ?? 0);
    answer[at] = rest / (row[at] || 1);
  }
  return answer;
}
