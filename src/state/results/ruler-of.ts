import { ticksOfMm } from '../../../shared/lengths';
import { type Ruler, USUAL_FINEST } from '../../core/units';
import type { WorkbookData } from '../workbook-state';
import { toolInHand } from './tool-in-hand';

/** The marks of the maker's own tool, or the usual ones of her unit while she has named none. */
export function rulerOf({ settings: { unit }, rows }: Pick<WorkbookData, 'settings' | 'rows'>): Ruler {
  const own = toolInHand(rows.tools, unit);
  return { unit, finest: own ? ticksOfMm(own.finestMarkMm) : USUAL_FINEST[unit] };
}
