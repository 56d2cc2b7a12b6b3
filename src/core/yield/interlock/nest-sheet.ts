import { type At, areaOf, gcd, type Ring } from '../../plane';
import { inches, type Ticks, ticks } from '../../units/ticks';
import { swayFrom } from '../stock/sway';
import type { Layout, SheetPaper, SheetPart } from '../types';
import { checkNest, type LaidOutline } from './check-nest';
import { NestGrid, type Place } from './nest-grid';
import { type Lie, liesOf, type Quarter, quartersOf, tidyRing, turnRing } from './outline';
import { separate } from './separate';

/** A part by its real outline; `grain` as of the outline lying unturned. */
export interface OutlinePart {
  readonly id: string;
  readonly ring: Ring;
  readonly grain: SheetPart['grain'];
}

/** One copy on the sheet: turned so many quarters, then its box's lower left corner put at x, y of the sheet. */
export interface NestedPart {
  readonly part: string;
  readonly quarter: Quarter;
  readonly x: Ticks;
  readonly y: Ticks;
  readonly across: Ticks;
  readonly up: Ticks;
}

/** One sheet with real outlines laid into one another. It cannot be cut on a trimmer. */
export interface Nest {
  readonly parts: readonly NestedPart[];
  /** What edge-to-edge cuts get out of the same sheet, box by box; never more than `parts`. */
  readonly boxed: number;
  /** More would have more card than the sheet: not a proof that so many can lie on it. */
  readonly most: number;
  readonly gap: Ticks;
}

export interface NestOptions {
  /** Least distance between two outlines; 0: they may share a cut. */
  readonly gap?: Ticks;
  readonly seconds?: number;
  /** Tries at one more copy before giving up. */
  readonly rounds?: number;
  /** Milliseconds from any clock; without one only moves are counted. */
  readonly now?: () => number;
  readonly shouldStop?: () => boolean;
  /** Told every better nest on the way. */
  readonly onProgress?: (nest: Nest) => void;
}

/** Grids that are tried, coarse first. source: our own; the reference counts on eighths of an inch. */
const STEPS: readonly number[] = [inches(0, 1, 8), inches(0, 1, 16), inches(0, 1, 32)];
const MOVES_PER_PART = 300; // a try that has not come apart by then seldom does; our own, by trial
const ROUNDS = 60;

/**
 * As many copies of one outline as are found to lie on one sheet, any quarter turn that the grain permits. Starts from the layout that a trimmer
 * cuts, so never answers fewer; every nest has passed `checkNest`. Same input, same nest, unless a clock cuts it short.
 */
export function nestOnSheet(
  part: OutlinePart,
  paper: SheetPaper,
  boxed: Layout | null,
  options: NestOptions = {},
): Nest {
  const { gap = ticks(0), seconds = 3, rounds = ROUNDS, now, shouldStop = () => false, onProgress } = options;
  const ring = tidyRing(part.ring);
  const lies = liesOf(ring, quartersOf(part.grain, paper));
  const { left, right, near, far } = paper.squaring;
  const room = { across: paper.across - left - right, up: paper.up - near - far };
  const most = Math.floor((room.across * room.up) / areaOf(ring));
  let nest: Nest = { parts: boxedParts(part, ring, boxed, gap), boxed: boxed?.parts.length ?? 0, most, gap };
  const deadline = now === undefined ? Number.POSITIVE_INFINITY : now() + seconds * 1000;
  const stop = () => shouldStop() || (now !== undefined && now() >= deadline);
  const grids = stepsFor(ring).map((step) => new NestGrid([lies], step, gap));
  const known: (readonly Place[])[] = grids.map(() => []);
  for (let round = 0; round < rounds && !stop(); round++)
    for (const [at, grid] of grids.entries())
      while (nest.parts.length < most && !stop()) {
        const count = nest.parts.length + 1;
        const start = round % 3 === 2 ? [] : (known[at] ?? []);
        const found = separate(grid, new Array<number>(count).fill(0), Array.from({ length: count }, (_, i) => start[i] ?? null), room, {
          moves: MOVES_PER_PART * count,
          stop,
          random: swayFrom(7919 * round + 104729 * count + grid.step),
        }); // biome-ignore format: one call
        if (found === null) break;
        known[at] = found;
        const parts = found.map((place) => nestedPart(part.id, grid, place, paper));
        if (faultsOf(parts, ring, paper, gap).length > 0) break;
        nest = { ...nest, parts };
        onProgress?.(nest);
      }
  return nest;
}

/** A common measure of all corners first: right-angled outlines then need no finer grid, whatever the sheet. */
function stepsFor(ring: Ring): readonly number[] {
  const measure = ring.reduce((common, [x, y]) => gcd(gcd(common, x - ring[0]![0]), y - ring[0]![1]), 0);
  const coarse = measure >= inches(0, 1, 16) && measure <= inches(1) ? [measure] : [];
  const square = ring.every(([x, y], at) => {
    const [nextX, nextY] = ring[(at + 1) % ring.length]!;
    return x === nextX || y === nextY;
  });
  return square && coarse.length > 0 ? coarse : [...new Set([...coarse, ...STEPS])];
}

const nestedPart = (
  id: string,
  grid: NestGrid,
  { lie, column, row }: Place,
  paper: SheetPaper,
): NestedPart => {
  const { quarter, across, up } = grid.lies[lie]!;
  return {
    part: id,
    quarter,
    x: ticks(paper.squaring.left + column * grid.step),
    y: ticks(paper.squaring.near + row * grid.step),
    across: ticks(across),
    up: ticks(up),
  };
};

/** The trimmer's own layout as a nest; with a gap its parts lie too near, so that there it is no start. */
function boxedParts(part: OutlinePart, ring: Ring, boxed: Layout | null, gap: Ticks): NestedPart[] {
  if (boxed === null || gap > 0) return [];
  return boxed.parts.map(({ x, y, turned }) => {
    const { quarter, across, up }: Lie = turnRing(ring, turned ? 1 : 0);
    return { part: part.id, quarter, x, y, across: ticks(across), up: ticks(up) };
  });
}

/** An outline where it lies on the sheet. */
export function laidRing(ring: Ring, { quarter, x, y }: NestedPart): Ring {
  return turnRing(ring, quarter).ring.map(([cx, cy]): At => [cx + x, cy + y]);
}

function faultsOf(parts: readonly NestedPart[], ring: Ring, paper: SheetPaper, gap: number): string[] {
  const laid = parts.map((part, at): LaidOutline => ({ name: `${at + 1}`, ring: laidRing(ring, part) }));
  return checkNest(laid, squaredEdges(paper), gap);
}

/** The squared sheet's edges in the sheet's own frame. */
const squaredEdges = ({ across, up, squaring }: SheetPaper) => ({
  left: squaring.left,
  near: squaring.near,
  right: across - squaring.right,
  far: up - squaring.far,
});
