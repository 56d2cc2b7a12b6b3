import { type At, contains } from '../../plane';

/** A figure that hides what lies behind it: its ring, and the holes that it does not hide through. */
export interface Cover {
  readonly ring: readonly At[];
  readonly holes: readonly (readonly At[])[];
}

/** A figure that a line borders on or crosses, and all that is painted over it. The line shows where the figure beside it shows. */
export interface LineSide {
  readonly figure: Cover;
  readonly covers: readonly Cover[];
}

const BESIDE_MM = 0.04; // how far inside its figure a line is looked at
const SHORTEST_MM = 0.25; // what shows through a joint between two covers is not drawn

/** The pieces of a straight line that show, since at least one of the figures it belongs to shows beside it. */
export function visiblePieces(from: At, to: At, sides: readonly LineSide[]): [At, At][] {
  const at = (share: number): At => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return [];
  const looks = sides.map(({ figure, covers }) => ({
    covers: covers.filter(meets(from, to)),
    off: towards(figure, from, to),
  }));
  const stops = looks
    .flatMap(({ covers }) =>
      covers.flatMap(({ ring, holes }) => [ring, ...holes].flatMap((one) => crossings(from, to, one))),
    )
    .sort((a, b) => a - b);
  const spans: [number, number][] = [];
  for (const end of [...stops, 1]) {
    const start = spans.at(-1)?.[1] ?? 0;
    if (end - start > 1e-9) spans.push([start, end]);
  }
  const shows = ([start, end]: [number, number]) => {
    const [x, y] = at((start + end) / 2);
    return looks.some(({ covers, off: [dx, dy] }) => !covers.some((cover) => hides(cover, [x + dx, y + dy])));
  };
  return joined(spans.filter(shows))
    .filter(([start, end]) => end - start === 1 || (end - start) * length > SHORTEST_MM)
    .map(([start, end]): [At, At] => [at(start), at(end)]);
}

/** A step from the middle of a line into its figure; none where the line runs through it, or the figure is seen edge-on. */
function towards({ ring }: Cover, from: At, to: At): At {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy] = [(-(to[1] - from[1]) / length) * BESIDE_MM, ((to[0] - from[0]) / length) * BESIDE_MM];
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const [left, right] = [contains(ring, [x + dx, y + dy]), contains(ring, [x - dx, y - dy])];
  if (left === right) return [0, 0];
  return left ? [dx, dy] : [-dx, -dy];
}

const hides = ({ ring, holes }: Cover, point: At) =>
  contains(ring, point) && !holes.some((hole) => contains(hole, point));

/** Whether a cover's box comes near a line's. */
const meets =
  (from: At, to: At) =>
  ({ ring }: Cover) =>
    ([0, 1] as const).every((axis) => {
      const [low, high] = [
        Math.min(from[axis], to[axis]) - BESIDE_MM,
        Math.max(from[axis], to[axis]) + BESIDE_MM,
      ];
      return ring.some((point) => point[axis] >= low) && ring.some((point) => point[axis] <= high);
    });

/** Where, along a line, it meets the sides of a ring: shares between 0 and 1. */
function crossings(from: At, to: At, ring: readonly At[]): number[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return ring.flatMap(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    const [ex, ey] = [bx - ax, by - ay];
    const across = dx * ey - dy * ex;
    if (Math.abs(across) < 1e-12) return [];
    const along = ((ax - from[0]) * ey - (ay - from[1]) * ex) / across;
    const side = ((ax - from[0]) * dy - (ay - from[1]) * dx) / across;
    return along > 0 && along < 1 && side >= -1e-9 && side <= 1 + 1e-9 ? [along] : [];
  });
}

/** Spans that meet, as one, so that dashes run through. */
function joined(spans: readonly [number, number][]): [number, number][] {
  const out: [number, number][] = [];
  for (const [start, end] of spans) {
    const last = out.at(-1);
    if (last && start === last[1]) last[1] = end;
    else out.push([start, end]);
  }
  return out;
}
