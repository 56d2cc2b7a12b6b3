import { countOnSheet } from './count-on-sheet';
import type { CuttingTool, SheetPaper, SheetPart } from './types';

/** How many of one part a sheet gives: all lying one way, all the other, and as they come. */
export interface BothWays {
  readonly straight: number;
  readonly turned: number;
  readonly mixed: number;
}

/** Counts of one part on one sheet, whatever its grain; exact for edge-to-edge cuts. */
export function countBothWays(
  part: Pick<SheetPart, 'id' | 'across' | 'up'>,
  paper: SheetPaper,
  tool: CuttingTool,
): BothWays {
  const count = (grain: SheetPart['grain'], along: SheetPaper['grain']) =>
    countOnSheet({ ...part, grain }, { ...paper, grain: along }, tool).count;
  return { straight: count('up', 'up'), turned: count('up', 'across'), mixed: count('free', 'none') };
}
