import { fillTable, layTable, type ValueTable } from '../pattern/best-pattern';
import { layGrid } from '../pattern/cutting-grid';
import type { CuttingProblem } from '../problem/cutting-problem';

/** Every size that a pushed-together block of items can have, and room to work out what fits around it. */
export interface BlockSizes {
  readonly table: ValueTable;
  readonly widths: Int32Array;
  readonly heights: Int32Array;
  /** Place of a length among the widths (heights); -1 between them. */
  readonly widthAt: Int32Array;
  readonly heightAt: Int32Array;
}

export function layBlockSizes(problem: CuttingProblem): BlockSizes {
  const table = layTable(layGrid(problem, true));
  const widths = table.grid.across.points;
  const heights = table.grid.up.points;
  return {
    table,
    widths,
    heights,
    widthAt: places(widths, problem.width),
    heightAt: places(heights, problem.height),
  };
}

function places(points: Int32Array, span: number): Int32Array {
  const at = new Int32Array(span + 1).fill(-1);
  for (const [place, point] of points.entries()) at[point] = place;
  return at;
}

/**
 * The most worth that can be cut around a block of each size standing in the sheet's corner, by edge-to-edge cuts, demands aside:
 * `result[width place × heights + height place]`. Source: Viswanathan & Bagchi, Oper. Res. 41 (1993) 768-776.
 */
export function boundAround(
  { table, widths, heights, widthAt, heightAt }: BlockSizes,
  worth: readonly number[],
): Float64Array {
  fillTable(table, worth);
  const inner = table.best[0]!;
  const [columns, rows] = [widths.length, heights.length];
  const { width: sheetWidth, height: sheetHeight } = table.grid.problem;
  const around = new Float64Array(columns * rows);
  for (let i = columns - 1; i >= 0; i--)
    for (let j = rows - 1; j >= 0; j--) {
      let most = 0;
      if (i + 1 < columns) most = around[(i + 1) * rows + j]!;
      if (j + 1 < rows) most = Math.max(most, around[i * rows + j + 1]!);
      for (let k = 1; k < columns && widths[i]! + widths[k]! <= sheetWidth; k++) {
        const both = around[widthAt[widths[i]! + widths[k]!]! * rows + j]! + inner[k * rows + j]!;
        if (both > most) most = both;
      }
      for (let k = 1; k < rows && heights[j]! + heights[k]! <= sheetHeight; k++) {
        const both = around[i * rows + heightAt[heights[j]! + heights[k]!]!]! + inner[i * rows + k]!;
        if (both > most) most = both;
      }
      around[i * rows + j] = most;
    }
  return around;
}

/** Steps that these sums take. */
export const workAround = ({ widths, heights }: BlockSizes): number =>
  widths.length * heights.length * (widths.length + heights.length);
