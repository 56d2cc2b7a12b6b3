import type { At } from '../../core/plane';

/** A length shown on the drawing while it is being changed. */
export function LengthPlate({ at: [x, y], says }: { readonly at: At; readonly says: string }) {
  const wide = plateWidth(says);
  return (
    <g className="style-ghost">
      <rect x={x - wide / 2} y={y - 4} width={wide} height={8} rx={1.5} className="style-ghost-plate" />
      <text x={x} y={y} dominantBaseline="central" textAnchor="middle" className="style-ghost-length">
        {says}
      </text>
    </g>
  );
}

/** About as wide as its letters, in units of the drawing. source: our own */
export const plateWidth = (says: string): number => says.length * 2.9 + 4;
