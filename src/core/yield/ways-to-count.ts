import type { CuttingTool, SheetPaper, SheetPart } from './types';

/** One count: this part on this sheet. */
interface OneCount {
  readonly part: Omit<SheetPart, 'count'>;
  readonly paper: SheetPaper;
  readonly tool: CuttingTool;
}

/** The three counts by which a part is weighed on a sheet, whatever its grain: all lying one way, all the other, and as they come. */
export function waysToCount(
  { id, across, up }: Pick<SheetPart, 'id' | 'across' | 'up'>,
  paper: SheetPaper,
  tool: CuttingTool,
): readonly [straight: OneCount, turned: OneCount, mixed: OneCount] {
  const way = (grain: SheetPart['grain'], along: SheetPaper['grain']): OneCount => ({
    part: { id, across, up, grain },
    paper: { ...paper, grain: along },
    tool,
  });
  return [way('up', 'up'), way('up', 'across'), way('free', 'none')];
}
