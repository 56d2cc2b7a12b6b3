import type { BoundProof, CuttingTool, SheetPaper, SheetPart } from '../types';
import { mostPoints } from './most-points';

/**
 * Whether a bound follows from its points, all in whole numbers: no sheet holds more than `most`, and the parts that fit at all are worth
 * more than one sheet less than `sheets` could hold. Answers what is wrong, or null.
 */
export function checkBound(
  proof: BoundProof,
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
  unplaced: readonly string[] = [],
): string | null {
  const placed = parts.filter(({ id }) => !unplaced.includes(id));
  const most = mostPoints(proof.points, placed, paper, tool);
  if (most > proof.most) return `a sheet can hold ${most} points, the proof says ${proof.most}`;
  const total = placed.reduce(
    (sum, { id, count }) => sum + BigInt(proof.points[id] ?? 0) * BigInt(count),
    0n,
  );
  if (total <= BigInt(proof.most) * BigInt(proof.sheets - 1))
    return `${total} points need no ${proof.sheets} sheets of ${proof.most}`;
  return null;
}
