import { type At, Unreadable } from './lengths';

/**
 * A piece of card on a table, as hands work it: turned, turned over, scored, slit and trimmed. Its own frame is the card as it lay first,
 * seen from above, in 320ths of a millimeter.
 */
export interface Line {
  readonly a: At;
  readonly b: At;
}

export class TableCard {
  readonly width: number;
  readonly height: number;
  /** Which side lies up now. */
  goodUp: boolean;
  readonly #firstGoodUp: boolean;
  readonly #fence: 'left' | 'right';
  #ring: At[];
  readonly holes: At[][] = [];
  readonly slits: Line[] = [];
  readonly scores: (Line & { readonly pressedGood: boolean })[] = [];
  #back: ((at: At) => At)[] = [];
  #size: At;

  constructor(width: number, height: number, goodUp: boolean, fence: 'left' | 'right') {
    this.width = width;
    this.height = height;
    this.#size = [width, height];
    this.goodUp = goodUp;
    this.#firstGoodUp = goodUp;
    this.#fence = fence;
    this.#ring = [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ];
  }

  get firstGoodUp(): boolean {
    return this.#firstGoodUp;
  }

  /** The card as it lies: across, up. */
  get lying(): At {
    return this.#size;
  }

  get outline(): readonly At[] {
    return this.#ring;
  }

  turn(quartersLeft: number): void {
    for (let i = 0; i < ((quartersLeft % 4) + 4) % 4; i++) {
      const [, high] = this.#size;
      this.#back.unshift(([x, y]) => [y, high - x]);
      this.#size = [this.#size[1], this.#size[0]];
    }
  }

  /** Left to right. */
  turnOver(): void {
    const [wide] = this.#size;
    this.#back.unshift(([x, y]) => [wide - x, y]);
    this.goodUp = !this.goodUp;
  }

  /** From a place measured off the fence and the near edge to the card's own frame. */
  place([across, up]: At): At {
    const [wide, high] = this.#size;
    if (across < 0 || up < 0 || across > wide || up > high)
      throw new Unreadable(`${across} × ${up} is off the card`);
    const seen: At = [this.#fence === 'left' ? across : wide - across, up];
    return this.#back.reduce((at, back) => back(at), seen);
  }

  score(a: At, b: At): void {
    this.scores.push({ a: this.place(a), b: this.place(b), pressedGood: this.goodUp });
  }

  slit(a: At, b: At): void {
    this.slits.push({ a: this.place(a), b: this.place(b) });
  }

  hole(ring: readonly At[]): void {
    this.holes.push(ring.map((at) => this.place(at)));
  }

  /**
   * A cut from edge to edge. A cut between two edges of the sheet as it was bought keeps the larger part of that sheet, as its picture
   * shows; any other the larger part of what is left. The smaller is kept where it is said.
   */
  cut(measured: readonly At[], keepSmaller: boolean): void {
    const path = measured.map((at) => this.place(at));
    const [first, last] = [path[0], path.at(-1)];
    if (!first || !last) throw new Unreadable('a cut of no points');
    for (const [i, b] of path.slice(1).entries()) this.#runsWithin(path[i] as At, b);
    const sheet: At[] = [
      [0, 0],
      [this.width, 0],
      [this.width, this.height],
      [0, this.height],
    ];
    const onSheet = [first, last].every((end) => withPoint(sheet, end).some((at) => isSame(at, end)));
    const judged = onSheet ? parted(sheet, path) : parted(this.#ring, path);
    const isLeft = Math.abs(area(judged.left)) > Math.abs(area(judged.right)) !== keepSmaller;
    const { left, right } = parted(this.#ring, path);
    this.#ring = isLeft ? left : right;
  }

  /** There is card all along a cut. */
  #runsWithin(a: At, b: At): void {
    const middle: At = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const crossed = this.#ring.some((p, i) =>
      isCrossed(a, b, p, this.#ring[(i + 1) % this.#ring.length] as At),
    );
    if (crossed || !isInside(this.#ring, middle))
      throw new Unreadable(`a cut from ${a.join(' × ')} runs off the card`);
  }
}

/** Do two lines cross where neither ends? */
const isCrossed = (a: At, b: At, p: At, q: At): boolean =>
  cross(a, b, p) * cross(a, b, q) < 0 && cross(p, q, a) * cross(p, q, b) < 0;

export function isInside(ring: readonly At[], [x, y]: At): boolean {
  let inside = false;
  ring.forEach(([px, py], i) => {
    const [qx, qy] = ring[(i + 1) % ring.length] as At;
    if (py > y !== qy > y && x < px + ((y - py) / (qy - py)) * (qx - px)) inside = !inside;
  });
  return inside;
}

/** What lies on either side of a cut, as the outline runs on from its first end and from its last. */
function parted(outline: readonly At[], path: readonly At[]): { readonly left: At[]; readonly right: At[] } {
  const [first, last] = [path[0] as At, path.at(-1) as At];
  const ring = withPoint(withPoint(outline, first), last);
  const [from, to] = [indexOf(ring, first), indexOf(ring, last)];
  const walk = (start: number, end: number): At[] => {
    const found: At[] = [];
    for (let i = start; ; i = (i + 1) % ring.length) {
      found.push(ring[i] as At);
      if (i === end) return found;
    }
  };
  const inner = path.slice(1, -1);
  return { left: [...walk(from, to), ...inner.toReversed()], right: [...walk(to, from), ...inner] };
}

const isSame = (p: At, q: At): boolean => p[0] === q[0] && p[1] === q[1];
const cross = (o: At, p: At, q: At): number => (p[0] - o[0]) * (q[1] - o[1]) - (p[1] - o[1]) * (q[0] - o[0]);

const area = (ring: readonly At[]): number =>
  ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length] as At;
    return sum + p[0] * q[1] - p[1] * q[0];
  }, 0);

function indexOf(ring: readonly At[], at: At): number {
  const found = ring.findIndex((point) => isSame(point, at));
  if (found < 0) throw new Unreadable(`a cut ends at ${at.join(' × ')}, within the card`);
  return found;
}

/** The outline with this place of it as a corner. */
function withPoint(ring: readonly At[], at: At): At[] {
  if (ring.some((point) => isSame(point, at))) return [...ring];
  const edge = ring.findIndex((p, i) => isBetween(at, p, ring[(i + 1) % ring.length] as At));
  return edge < 0 ? [...ring] : [...ring.slice(0, edge + 1), at, ...ring.slice(edge + 1)];
}

const isBetween = (at: At, p: At, q: At): boolean =>
  cross(p, q, at) === 0 &&
  Math.min(p[0], q[0]) <= at[0] &&
  at[0] <= Math.max(p[0], q[0]) &&
  Math.min(p[1], q[1]) <= at[1] &&
  at[1] <= Math.max(p[1], q[1]);
