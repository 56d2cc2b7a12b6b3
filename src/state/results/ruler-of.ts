import { ticksOfMm } from '../../core/rows/lengths';
import { type Ruler, rulerBeside } from '../../core/units';
import type { WorkbookData } from '../workbook-state';
import { toolInHand } from './tool-in-hand';

/** The ruler that lengths outside the bench are read on: the usual marks of their unit, or those of their tool where they are finer. */
export function rulerOf({ settings: { unit }, rows }: Pick<WorkbookData, 'settings' | 'rows'>): Ruler {
  const own = toolInHand(rows.tools, unit);
  return rulerBeside(unit, own && ticksOfMm(own.finestMarkMm));
}
