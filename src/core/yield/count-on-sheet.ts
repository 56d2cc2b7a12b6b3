import { layTree } from './layout';
import { fillTable, layTable, readSheet } from './pattern/best-pattern';
import { layGrid } from './pattern/cutting-grid';
import { layProblem } from './problem/sheet-problem';
import type { CuttingTool, Layout, SheetPaper, SheetPart } from './types';

export interface SheetCount {
  readonly count: number;
  /** Null: not even one fits. */
  readonly layout: Layout | null;
}

/** The most of one part that edge-to-edge cuts get out of one sheet, exactly, and how. The part's own `count` plays no role. */
export function countOnSheet(
  part: Omit<SheetPart, 'count'>,
  paper: SheetPaper,
  tool: CuttingTool,
): SheetCount {
  const sheet = layProblem([{ ...part, count: 1 }], paper, tool);
  if (sheet.problem.items.length === 0) return { count: 0, layout: null };
  const table = layTable(layGrid(sheet.problem));
  const count = fillTable(table, [1]);
  const [laid] = sheet.kinds[0]?.parts ?? [];
  if (count === 0 || laid === undefined) return { count, layout: null };
  return { count, layout: { sheets: 1, ...layTree(readSheet(table, [1]), sheet, () => laid) } };
}
