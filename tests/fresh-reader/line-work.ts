import type { At } from './lengths';
import { isInside, type Line, type TableCard } from './table-card';

/** Exact for lines between whole places: direction in lowest terms, and how far off the origin. */
function carrier([ax, ay]: At, [bx, by]: At) {
  const shared = gcd(Math.abs(bx - ax), Math.abs(by - ay));
  let [dx, dy] = [(bx - ax) / shared, (by - ay) / shared];
  if (dx < 0 || (dx === 0 && dy < 0)) [dx, dy] = [0 - dx, 0 - dy];
  return {
    key: `${dx} ${dy} ${dx * ay - dy * ax}`,
    along: ([x, y]: At) => (x * dx + y * dy) / (dx * dx + dy * dy),
    at: (far: number): At => {
      const off = (dx * ay - dy * ax) / (dx * dx + dy * dy);
      return [far * dx - off * dy, far * dy + off * dx];
    },
    step: 1 / Math.hypot(dx, dy),
  };
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

function merged(stretches: readonly (readonly [number, number])[]): string {
  const found: [number, number][] = [];
  for (const [from, to] of [...stretches].sort((p, q) => p[0] - q[0])) {
    const last = found.at(-1);
    if (last && from <= last[1] + 1e-9) last[1] = Math.max(last[1], to);
    else found.push([from, to]);
  }
  return found
    .map((ends) => ends.map((end) => (Math.round(end * 1e7) / 1e7 + 0).toFixed(7)).join('..'))
    .join(' ');
}

/** The finished card: its outline and holes, and of slits and scores what has card on both sides; a slit takes a score away. */
export function workOf(card: TableCard, overBead: boolean): (Line & { readonly work: string })[] {
  const rings = [card.outline, ...card.holes];
  const outline = rings.flatMap((ring) =>
    ring.map((a, i) => ({ a, b: ring[(i + 1) % ring.length] as At, work: 'outline' })),
  );
  const isCard = (at: At): boolean =>
    rings.filter((ring) => isInside(ring, at)).length === 1 && isInside(card.outline, at);
  const within = (line: Line, others: readonly Line[]): { a: At; b: At }[] => {
    const { along, at, step } = carrier(line.a, line.b);
    const [from, to] = [along(line.a), along(line.b)].sort((p, q) => p - q) as [number, number];
    const ends = [from, to, ...[...outline, ...others].flatMap((other) => meetings(line, other).map(along))]
      .filter((end) => end >= from && end <= to)
      .sort((p, q) => p - q);
    return ends.flatMap((start, i) => {
      const end = ends[i + 1];
      if (end === undefined || end - start < 1e-9) return [];
      const [x, y] = at((start + end) / 2);
      const [dx, dy] = [line.b[0] - line.a[0], line.b[1] - line.a[1]];
      const far = 0.2 / Math.hypot(dx, dy);
      const sides: At[] = [
        [x - dy * far, y + dx * far],
        [x + dy * far, y - dx * far],
      ];
      const slit = others.some((other) => isOn(other, [x, y], step));
      return sides.every(isCard) && !slit ? [{ a: at(start), b: at(end) }] : [];
    });
  };
  const kept = (line: Line, work: string, others: readonly Line[]) =>
    within(line, others).map((part) => ({ ...part, work, on: line }));
  const scores = card.scores.map((score) => ({
    ...score,
    work: score.pressedGood === overBead ? 'fold in' : 'fold out',
  }));
  return [
    ...outline,
    ...card.slits.flatMap((slit) => kept(slit, 'slit', [])),
    ...scores.flatMap((score) => kept(score, score.work, card.slits)),
  ];
}

/** Stretches cut off between whole places keep the line they lie on: their ends need not be whole. */
export function spellWork(
  lines: readonly (Line & { readonly work: string; readonly on?: Line })[],
  turn: (at: At) => At,
): string {
  const byLine = new Map<string, [number, number][]>();
  for (const { a, b, work, on } of lines) {
    const whole = on ?? { a, b };
    if (whole.a[0] === whole.b[0] && whole.a[1] === whole.b[1]) continue;
    const { key, along } = carrier(turn(whole.a), turn(whole.b));
    const ends = [along(turn(a)), along(turn(b))].sort((p, q) => p - q) as [number, number];
    byLine.set(`${work} ${key}`, [...(byLine.get(`${work} ${key}`) ?? []), ends]);
  }
  return [...byLine]
    .map(([key, ends]) => `${key}: ${merged(ends)}`)
    .sort()
    .join('\n');
}

function meetings(line: Line, other: Line): At[] {
  const [dx, dy] = [line.b[0] - line.a[0], line.b[1] - line.a[1]];
  const side = ([x, y]: At): number => dx * (y - line.a[1]) - dy * (x - line.a[0]);
  const [p, q] = [side(other.a), side(other.b)];
  if (p === 0 && q === 0) return [other.a, other.b];
  if ((p > 0 && q > 0) || (p < 0 && q < 0)) return [];
  const share = p / (p - q);
  return [[other.a[0] + share * (other.b[0] - other.a[0]), other.a[1] + share * (other.b[1] - other.a[1])]];
}

function isOn({ a, b }: Line, [x, y]: At, near: number): boolean {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const long = Math.hypot(dx, dy);
  const far = ((x - a[0]) * dx + (y - a[1]) * dy) / long;
  return Math.abs(dx * (y - a[1]) - dy * (x - a[0])) / long < Math.min(0.01, near) && far >= 0 && far <= long;
}
