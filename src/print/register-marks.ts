import { lineMark } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import type { At } from '../core/plane';
import { OVERLAP_MM, type Tile, type Tiling } from './tiling';

const ARM_MM = 4;
const RING_MM = 2;
const ALONG = [0.12, 0.5, 0.88]; // where crosses stand along a shared strip

/** Crosses in the strips that a page shares with its neighbors, at the same places of the drawing on both. */
export function drawRegister({ columns, rows }: Tiling, { row, column, window }: Tile): Mark[] {
  const { left, right, bottom, top } = window;
  const half = OVERLAP_MM / 2;
  const upright = [...(column > 0 ? [left + half] : []), ...(column < columns - 1 ? [right - half] : [])];
  const level = [...(row > 0 ? [top - half] : []), ...(row < rows - 1 ? [bottom + half] : [])];
  const at = (from: number, to: number) => ALONG.map((share) => from + share * (to - from));
  return [
    ...upright.flatMap((x) => at(bottom, top).map((y): At => [x, y])),
    ...level.flatMap((y) => at(left, right).map((x): At => [x, y])),
  ].flatMap(drawCross);
}

const drawCross = ([x, y]: At): Mark[] => [
  lineMark('guide', [[x - ARM_MM, y], [x + ARM_MM, y]], `register ${x.toFixed(3)} ${y.toFixed(3)}`), // biome-ignore format: one stroke
  lineMark('guide', [[x, y - ARM_MM], [x, y + ARM_MM]]), // biome-ignore format: one stroke
  { kind: 'arc', ink: 'guide', centre: [x, y], radius: RING_MM, fromDeg: 0, sweepDeg: 360 },
];
