import { type At, areaOf, type Ring } from '../../plane';
import { swayFrom } from '../stock/sway';
import { checkNest } from './check-nest';
import { NestGrid, type Place } from './nest-grid';
import { type Lie, liesOf, type Quarter } from './outline';
import { separate } from './separate';

/** An outline wanted `count` times on a strip; whole units of any length. */
export interface StripPart {
  readonly ring: Ring;
  readonly count: number;
  readonly quarters: readonly Quarter[];
}

export interface StripPlace {
  readonly part: number;
  readonly quarter: Quarter;
  readonly x: number;
  readonly y: number;
  readonly ring: Ring;
}

export interface StripNest {
  readonly length: number;
  /** No strip is shorter: its area, and the longest part in its shortest lie. */
  readonly lowerBound: number;
  readonly parts: readonly StripPlace[];
}

export interface StripOptions {
  readonly seconds: number;
  /** Milliseconds from any clock. */
  readonly now: () => number;
  /** Grids tried one after the other, coarse first, each a whole number of times the next. */
  readonly steps: readonly number[];
}

const SHARES = [0.45, 1]; // of the time, until which the first and the later grids are used; our own, by trial

/** A short strip of this height that holds every part: found, then shortened again and again. Null: some part is higher than the strip. */
export function nestStrip(
  parts: readonly StripPart[],
  height: number,
  options: StripOptions,
): StripNest | null {
  const { seconds, now, steps } = options;
  const started = now();
  const kinds = parts.map(({ ring, quarters }) => liesOf(ring, quarters).filter(({ up }) => up <= height));
  if (kinds.some((lies) => lies.length === 0)) return null;
  const kindOf = parts.flatMap(({ count }, kind) => new Array<number>(count).fill(kind));
  const area = parts.reduce((sum, { ring, count }) => sum + count * Math.abs(areaOf(ring)), 0);
  const shortest = Math.max(0, ...kinds.map((lies) => Math.min(...lies.map(({ across }) => across))));
  const lowerBound = Math.max(shortest, Math.ceil(area / height));
  let best: { readonly grid: NestGrid; readonly places: readonly Place[]; readonly length: number } | null =
    null;
  let round = 0;

  for (const [at, step] of steps.entries()) {
    const share = SHARES[Math.min(at, SHARES.length - 1)]!;
    const stop = () => now() - started >= seconds * 1000 * share;
    const grid = new NestGrid(kinds, step, 0);
    const known = (): readonly Place[] =>
      best?.places.map(({ lie, column, row }) => {
        const finer = best!.grid.step / step;
        return { lie, column: column * finer, row: row * finer };
      }) ?? [];
    // A first plan in any case: ever longer until one is found.
    for (let loose = 1.3; best === null; loose *= 1.15) {
      const length = Math.ceil((lowerBound * loose) / step) * step;
      best = attempt(
        grid,
        kindOf,
        [],
        { across: length, up: height },
        20 * kindOf.length,
        () => false,
        ++round,
      );
    }
    let cut = 0.02;
    while (!stop() && best.length > lowerBound) {
      const length = Math.max(
        lowerBound,
        Math.min(best.length - step, Math.floor((best.length * (1 - cut)) / step) * step),
      );
      const start = known().map((place) => pullIn(grid, place, length));
      const found = attempt(
        grid,
        kindOf,
        start,
        { across: length, up: height },
        150 * kindOf.length,
        stop,
        ++round,
      );
      if (found !== null) best = found;
      else cut /= 2;
    }
  }
  if (best === null) return null;
  const { grid, places, length } = best;
  const laid = places.map((place, at) => layPart(grid, place, kindOf[at]!));
  const named = laid.map(({ ring }, at) => ({ name: `${at}`, ring }));
  const faults = checkNest(named, { left: 0, near: 0, right: length, far: height });
  if (faults.length > 0) throw new Error(`the nest cannot be cut: ${faults.join('; ')}`);
  return { length, lowerBound, parts: laid };
}

function attempt(
  grid: NestGrid,
  kindOf: readonly number[],
  start: readonly Place[],
  sheet: { readonly across: number; readonly up: number },
  moves: number,
  stop: () => boolean,
  seed: number,
) {
  const begin = kindOf.map((_, at) => start[at] ?? null);
  const places = separate(grid, kindOf, begin, sheet, { moves, stop, random: swayFrom(7919 * seed) });
  if (places === null) return null;
  const ends = places.map(({ lie, column }) => column * grid.step + (grid.lies[lie] as Lie).across);
  return { grid, places, length: Math.max(...ends) };
}

/** What would stick out is pushed back onto the strip. */
function pullIn(grid: NestGrid, place: Place, length: number): Place {
  const { columns } = grid.room(place.lie, length, Number.MAX_SAFE_INTEGER);
  return { ...place, column: Math.max(0, Math.min(place.column, columns - 1)) };
}

function layPart(grid: NestGrid, { lie, column, row }: Place, part: number): StripPlace {
  const { quarter, ring } = grid.lies[lie] as Lie;
  const [x, y] = [column * grid.step, row * grid.step];
  return { part, quarter, x, y, ring: ring.map(([cx, cy]): At => [cx + x, cy + y]) };
}
