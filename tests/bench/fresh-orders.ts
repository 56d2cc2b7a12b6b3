import { type Ticks, ticks } from '../../src/core/units/ticks';
import type { CuttingTool, SheetPaper, SheetPart } from '../../src/core/yield';
import { swayFrom } from '../../src/core/yield/stock/sway';
import { paperOf, partOf, toolOf } from '../core/yield/sheets-at-hand';

/** An order that nobody tuned the search to. */
export interface FreshOrder {
  readonly name: string;
  readonly paper: SheetPaper;
  readonly parts: readonly SheetPart[];
  readonly tool: CuttingTool;
}

const SIXTEENTH = 508; // Ticks.

/** True sheet sizes, in sixteenths of an inch or in millimetres. */
const INCH_SHEETS = [[136, 176], [192, 192], [176, 272], [192, 288]] as const; // biome-ignore format: one row
const MM_SHEETS = [
  [210, 297],
  [297, 420],
] as const;

/** Sheets that printers use, 13 × 19 in. */
export const SUPER_B = [208, 304] as const;

/** Orders of `least` to `most` sizes, `demand` copies of each at most; the same seed gives the same orders. */
export function freshOrders(
  seed: number,
  count: number,
  [least, most]: readonly [number, number],
  demand: number,
  {
    longSheets = false,
    sheet,
  }: { readonly longSheets?: boolean; readonly sheet?: readonly [number, number] } = {},
): FreshOrder[] {
  const sway = swayFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(sway() * (to - from + 1));
  return Array.from({ length: count }, (_, order) => {
    const metric = sway() < 0.3 && sheet === undefined;
    const sheets = metric ? MM_SHEETS : INCH_SHEETS;
    const [w, h] = sheet ?? (longSheets ? sheets[sheets.length - 1 - whole(0, metric ? 0 : 1)]! : sheets[whole(0, sheets.length - 1)]!); // biome-ignore format: one row
    const unit = metric ? 320 : SIXTEENTH;
    const length = (marks: number): Ticks => ticks(marks * unit);
    // Half the orders keep to eighths of an inch or whole 5 mm, as a maker's sizes mostly do.
    const step = sway() < 0.5 ? (metric ? 5 : 2) : 1;
    const side = (span: number): Ticks => length(Math.max(step, Math.round((span * (0.1 + 0.6 * sway())) / step) * step)); // biome-ignore format: one row
    const grained = sway() < 0.4;
    const parts = Array.from({ length: whole(least, most) }, (_, at) =>
      partOf(String(at), side(w), side(h), whole(1, demand), {
        grain: grained && sway() < 0.6 ? (sway() < 0.5 ? 'across' : 'up') : 'free',
      }),
    );
    return {
      name: `seed ${seed} order ${order}`,
      paper: paperOf(length(w), length(h), { grain: grained ? 'up' : 'none' }),
      parts,
      tool: toolOf(longSheets ? { longestCut: ticks(12 * 16 * SIXTEENTH) } : {}),
    };
  });
}
