import { type At, contains } from '../../plane';
import { CAP_HEIGHT } from './letters';
import { centredText, type TextMark, textCorners } from './marks';

export interface StackLine {
  readonly text: string;
  readonly sizeMm: number;
  readonly bold?: boolean;
}

/** Room between the capitals of one line and the foot of the line above it, over the lower line's size. */
const LEADING = 0.5;

/** Lines of text above one another, centred on a point; turned 90 degrees they read upwards. */
export function stackText(lines: readonly StackLine[], [x, y]: At, turnDeg: 0 | 90 = 0): TextMark[] {
  const gaps = lines.slice(1).map(({ sizeMm }) => LEADING * sizeMm);
  const height =
    lines.reduce((sum, { sizeMm }) => sum + CAP_HEIGHT * sizeMm, 0) + gaps.reduce((a, b) => a + b, 0);
  let top = height / 2;
  return lines.map(({ text, sizeMm, bold = false }, i) => {
    const middle = top - (CAP_HEIGHT * sizeMm) / 2;
    top -= CAP_HEIGHT * sizeMm + (gaps[i] ?? 0);
    return centredText(text, turnDeg === 0 ? [x, y + middle] : [x - middle, y], sizeMm, { bold, turnDeg });
  });
}

/** A figure on paper: rings in mm that together cover it. */
export type Rings = readonly (readonly At[])[];

const SHARES = [0, 1, 0.5, 0.25, 0.75];
/** Points around the border of a unit square, corners first. */
const BORDER = SHARES.flatMap((s) => SHARES.map((t) => [s, t] as const)).filter(
  (point) => point.includes(0) || point.includes(1),
);

/** True when what the text fills, widened by a margin, lies within the panel: tried at points around it. */
export function fitsInside(label: TextMark, rings: Rings, marginMm: number): boolean {
  const [nearLeft, nearRight, , farLeft] = textCorners(label) as [At, At, At, At];
  const between = (from: At, to: At) => [to[0] - from[0], to[1] - from[1]] as const;
  const [along, up] = [between(nearLeft, nearRight), between(nearLeft, farLeft)];
  const widen = (share: number, [dx, dy]: At) => share + ((share - 0.5) * 2 * marginMm) / Math.hypot(dx, dy);
  return BORDER.every(([s, t]) => {
    const [u, v] = [widen(s, along), widen(t, up)];
    const point: At = [nearLeft[0] + u * along[0] + v * up[0], nearLeft[1] + u * along[1] + v * up[1]];
    return rings.some((ring) => contains(ring, point));
  });
}

/** A ring a little larger than what a text fills: a white patch that keeps a hatch off the letters. */
export function patchBehind(label: TextMark): readonly At[] {
  const corners = textCorners(label);
  const middle = (i: 0 | 1) => corners.reduce((sum, corner) => sum + corner[i], 0) / corners.length;
  const [cx, cy] = [middle(0), middle(1)];
  return corners.map(([x, y]): At => {
    const away = Math.hypot(x - cx, y - cy);
    return [cx + ((x - cx) * (away + 0.8)) / away, cy + ((y - cy) * (away + 0.8)) / away];
  });
}
