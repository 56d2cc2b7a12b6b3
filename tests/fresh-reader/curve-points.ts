import { type At, readLength, readPlace, type Unit, Unreadable } from './lengths';

/** The points of a card's curves by their names, held against what its sentences say of them. */
export class CurvePoints {
  readonly #unit: Unit;
  readonly #points = new Map<string, readonly At[]>();

  constructor(unit: Unit) {
    this.#unit = unit;
  }

  read(row: string): void {
    const [, name, list = ''] = /^(\w+ \d+) runs through (.+) mm\.$/.exec(row) ?? [];
    if (name === undefined) throw new Unreadable(row);
    this.#points.set(
      name,
      list.split('; ').map((place) => readPlace(place, 'mm')),
    );
  }

  between(name: string, from: string, to: string): readonly At[] {
    const points = this.#points.get(name);
    const ends = [readPlace(from, this.#unit), readPlace(to, this.#unit)];
    if (
      !points ||
      [points[0], points.at(-1)].some((end, i) => end?.[0] !== ends[i]?.[0] || end?.[1] !== ends[i]?.[1])
    )
      throw new Unreadable(name);
    return points;
  }

  asDeep(name: string, from: string, to: string, deep: string): readonly At[] {
    const points = this.between(name, from, to);
    const [a, b] = [points[0] as At, points.at(-1) as At];
    const rise = Math.max(...points.map((at) => off(a, b, at)));
    if (Math.abs(rise - readLength(deep, this.#unit)) > 1)
      throw new Unreadable(`${name} is not ${deep} deep`);
    return points;
  }

  /** A hole as large as is said, its middle where it is said. */
  hole(name: string, size: string, middle: string): readonly At[] {
    const ring = this.#points.get(name);
    if (!ring) throw new Unreadable(name);
    const middles = readPlace(middle, this.#unit);
    const [across = '', up = across] = size.split(' × ');
    const wanted = [readLength(across, this.#unit), readLength(up, this.#unit)];
    for (const [way, mid] of middles.entries()) {
      const all = ring.map((at) => at[way] as number);
      const [least, most] = [Math.min(...all), Math.max(...all)];
      if (most - least !== wanted[way] || Math.abs((most + least) / 2 - mid) > 0.5)
        throw new Unreadable(name);
    }
    return ring;
  }
}

/** How far a place lies off the straight line between two. */
const off = (a: At, b: At, [x, y]: At): number =>
  Math.abs((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / Math.hypot(b[0] - a[0], b[1] - a[1]);
