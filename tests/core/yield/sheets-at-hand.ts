import { inches, type Ticks, ticks } from '../../../src/core/units/ticks';
import type { CuttingTool, SheetPaper, SheetPart } from '../../../src/core/yield';

const none = ticks(0);
const NO_SQUARING = { left: none, right: none, near: none, far: none };

export const paperOf = (across: Ticks, up: Ticks, more: Partial<SheetPaper> = {}): SheetPaper => ({
  id: 'paper',
  across,
  up,
  grain: 'none',
  squaring: NO_SQUARING,
  onHand: 0,
  ...more,
});

export const partOf = (
  id: string,
  across: Ticks,
  up: Ticks,
  count: number,
  more: Partial<SheetPart> = {},
): SheetPart => ({
  id,
  across,
  up,
  count,
  grain: 'free',
  ...more,
});

export const toolOf = (more: Partial<CuttingTool> = {}): CuttingTool => ({
  longestCut: null,
  kerf: none,
  stack: 1,
  stages: 'free',
  ...more,
});

export const LETTER = paperOf(inches(8, 1, 2), inches(11), { id: 'letter' });
export const SQUARE_12 = paperOf(inches(12), inches(12), { id: '12x12' });
export const TABLOID = paperOf(inches(11), inches(17), { id: '11x17' });

/** The blank and liner of the trade box. Source: common practice, no source. */
export const BLANK = partOf('blank', inches(11), inches(4, 1, 2), 44);
export const LINER = partOf('liner', inches(3, 1, 2), inches(6), 44);
