/**
 * Whether a flat p × q packet lies in an a × b floor, turned if need be, and by how many degrees (0 square on, null not at all).
 * Same unit throughout. Exact. Source: J. E. Wetzel, Rectangles in Rectangles, Mathematics Magazine 73 (2000) 204-211.
 */
export function turnToFit(
  packet: readonly [number, number],
  floor: readonly [number, number],
): number | null {
  const [q, p] = [Math.min(...packet), Math.max(...packet)];
  const [b, a] = [Math.min(...floor), Math.max(...floor)];
  if (p <= a && q <= b) return 0;
  if (p <= a || q > b) return null;
  const least = (2 * p * q * a + (p * p - q * q) * Math.sqrt(p * p + q * q - a * a)) / (p * p + q * q);
  return b >= least ? steepestTurn(p, q, a) : null;
}

/** Turn the packet until its shadow on the long side is just `a`: p cos θ + q sin θ = a, the greater root. */
function steepestTurn(p: number, q: number, a: number): number {
  const lean = Math.atan2(q, p);
  return ((lean + Math.acos(Math.min(1, a / Math.hypot(p, q)))) * 180) / Math.PI;
}
