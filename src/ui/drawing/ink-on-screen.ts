import { INKS } from '../../core/draw/strokes/inks';
import type { Ink } from '../../core/draw/strokes/types';

/** CSS pixels to a millimeter of a drawing. source: CSS Values 4, 1 in = 96 px. */
export const PX_PER_MM = 96 / 25.4;

/** A screen stands farther off than a sheet in the hand, so its lines are a little wider: pixels to a millimeter of line width. */
const WIDTH_PX_PER_MM = 4.4;
const DASH_PX_PER_MM = 3;
const THINNEST_PX = 1;

/** The same ink as in print, for a stroke that keeps its width at every zoom. */
export function strokeOf(ink: Ink): { strokeWidth: number; strokeDasharray: string | undefined } {
  const { widthMm, dashMm } = INKS[ink];
  return {
    strokeWidth: widthMm === 0 ? 0 : Math.max(THINNEST_PX, widthMm * WIDTH_PX_PER_MM),
    strokeDasharray: dashMm.length === 0 ? undefined : dashMm.map((mm) => mm * DASH_PX_PER_MM).join(' '),
  };
}
