import type { Pattern } from '../pattern/pattern';
import type { PatternUse } from './pattern-plan';

/** Answers a good pattern for given item values that takes no more than is wanted. */
export type FindPattern = (values: readonly number[], wanted: readonly number[]) => Pattern;

/** Item values that the sequential method keeps correcting from plan to plan. */
export interface ValueMemory {
  values: number[];
}

/**
 * One whole plan, sheet by sheet: the best pattern for the values now, used as often as the demand allows; then items that were hard to
 * place well are made dearer. Source: Mukhacheva; Belov & Scheithauer, Oper. Res. Spektrum (sequential value correction, from memory).
 * `sway` in 0..1 sets how strongly. Null: more than `most` sheets are needed.
 */
export function planSequentially(
  wanted: readonly number[],
  areas: readonly number[],
  sheetArea: number,
  memory: ValueMemory,
  find: FindPattern,
  sway: () => number,
  most: number,
): PatternUse[] | null {
  const left = [...wanted];
  const uses: PatternUse[] = [];
  let sheets = 0;
  while (left.some((count) => count > 0)) {
    if (sheets + minimumSheets(left, areas, sheetArea) > most) return null;
    const pattern = find(memory.values, left);
    const times = Math.min(
      ...pattern.counts.map((count, item) =>
        count > 0 ? Math.floor(left[item]! / count) : Number.POSITIVE_INFINITY,
      ),
    );
    if (!Number.isFinite(times)) return null;
    uses.push({ pattern, sheets: times });
    sheets += times;
    correctValues(memory, pattern, left, times, areas, sheetArea, sway);
    for (const [item, count] of pattern.counts.entries()) left[item] = left[item]! - count * times;
  }
  return sheets <= most ? uses : null;
}

const minimumSheets = (left: readonly number[], areas: readonly number[], sheetArea: number): number =>
  Math.ceil(left.reduce((sum, count, item) => sum + count * areas[item]!, 0) / sheetArea);

function correctValues(
  memory: ValueMemory,
  { counts }: Pattern,
  left: readonly number[],
  times: number,
  areas: readonly number[],
  sheetArea: number,
  sway: () => number,
): void {
  const used = counts.reduce((sum, count, item) => sum + count * areas[item]!, 0);
  const power = 1.02 + 0.08 * sway();
  for (const [item, count] of counts.entries()) {
    if (count === 0) continue;
    const area = areas[item]!;
    const worth = (area ** power * sheetArea) / used;
    const weight = ((1.2 + 0.8 * sway()) * (left[item]! + left[item]!)) / (count * times);
    memory.values[item] = (weight * memory.values[item]! + worth) / (weight + 1);
  }
}
