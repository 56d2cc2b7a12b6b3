import type { Vector } from '../../../core/fold';
import type { Extent } from '../../../core/fold/solid-figure';

/** A dimension beside the closed box: what it measures, its line with two end strokes, and where its number stands. */
export interface Ruled {
  readonly of: 'width' | 'depth' | 'height';
  readonly mm: number;
  readonly ends: readonly Vector[];
  readonly label: Vector;
}

/** Width along the front, depth along the right side, height at the right front corner; millimeters of the standing frame. */
export function rulerLines({ low, high }: Extent): readonly Ruled[] {
  const off = 0.11 * Math.max(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
  const stroke = off / 3;
  const [front, right] = [low[1] - off, high[0] + off];
  return [
    {
      of: 'width',
      mm: high[0] - low[0],
      ends: [
        [low[0], front, low[2]],
        [high[0], front, low[2]],
        ...across([low[0], front, low[2]], [0, stroke, 0]),
        ...across([high[0], front, low[2]], [0, stroke, 0]),
      ],
      label: [(low[0] + high[0]) / 2, front - 1.6 * off, low[2]],
    },
    {
      of: 'depth',
      mm: high[1] - low[1],
      ends: [
        [right, low[1], low[2]],
        [right, high[1], low[2]],
        ...across([right, low[1], low[2]], [stroke, 0, 0]),
        ...across([right, high[1], low[2]], [stroke, 0, 0]),
      ],
      label: [right + 1.6 * off, (low[1] + high[1]) / 2, low[2]],
    },
    {
      of: 'height',
      mm: high[2] - low[2],
      ends: [
        [right, high[1], low[2]],
        [right, high[1], high[2]],
        ...across([right, high[1], low[2]], [stroke, 0, 0]),
        ...across([right, high[1], high[2]], [stroke, 0, 0]),
      ],
      label: [right + 2 * off, high[1], (low[2] + high[2]) / 2],
    },
  ];
}

const across = ([x, y, z]: Vector, [dx, dy, dz]: Vector): readonly Vector[] => [
  [x - dx, y - dy, z - dz],
  [x + dx, y + dy, z + dz],
];
