import type { At } from '../../core/plane';

interface MatGridProps {
  readonly window: {
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  };
  readonly stepMm: number;
  /** Where a line of the grid passes: the drawing's own corner. */
  readonly from: At;
}

const lines = (from: number, start: number, length: number, step: number) => {
  const first = Math.ceil((start - from) / step);
  const count = Math.max(0, Math.min(400, Math.floor((start + length - from) / step) - first + 1));
  return Array.from({ length: count }, (_, n) => from + (first + n) * step);
};

/** The squares of the cutting mat, true to the drawing's scale; every fifth line is stronger. */
export function MatGrid({ window: { left, top, width, height }, stepMm, from }: MatGridProps) {
  const path = (every: number) =>
    lines(from[0], left, width, stepMm * every)
      .map((x) => `M${x} ${top}v${height}`)
      .concat(lines(from[1], top, height, stepMm * every).map((y) => `M${left} ${y}h${width}`))
      .join('');
  return (
    <g className="mat-grid">
      <path className="mat-line" d={path(1)} />
      <path className="mat-line mat-line-strong" d={path(5)} />
    </g>
  );
}
