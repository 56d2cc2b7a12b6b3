import type { At } from '../../plane';
import type { SheetPaper } from '../../yield/types';
import { drawGrain, drawPrintWay } from '../strokes/grain-arrow';
import type { Mark } from '../strokes/types';

/** Beside a sheet: which way its print stands, else which way its grain runs; nothing where it matters neither way. */
export function drawWayOf({ grain, oneWay }: SheetPaper, size: At, textMm: number): Mark[] {
  if (oneWay) return drawPrintWay(size, textMm);
  return grain === 'none' ? [] : drawGrain(grain, size, textMm);
}
