import { boxOfMarks } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import type { At } from '../core/plane';

interface Room {
  readonly widthMm: number;
  readonly heightMm: number;
}

const STEP_MM = 2; // between two places that are tried
const CLEAR_MM = 1.5; // kept free round what is put there

/**
 * Where a block of this size has a column to itself, clear of every mark on it: its top left corner, as marks hang from the column’s. The
 * lowest such place, and of those the farthest right; null if there is none.
 */
export function freeRoom(marks: readonly Mark[], column: Room, size: Room): At | null {
  const taken = marks.map((mark) => boxOfMarks([mark]));
  for (let bottom = 0 - column.heightMm; bottom + size.heightMm <= 0; bottom += STEP_MM)
    for (let left = column.widthMm - size.widthMm; left >= 0; left -= STEP_MM) {
      const [right, top] = [left + size.widthMm, bottom + size.heightMm];
      const isFree = taken.every(
        (box) =>
          box.right + CLEAR_MM <= left ||
          box.left - CLEAR_MM >= right ||
          box.top + CLEAR_MM <= bottom ||
          box.bottom - CLEAR_MM >= top,
      );
      if (isFree) return [left, top];
    }
  return null;
}
