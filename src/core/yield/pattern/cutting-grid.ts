import { type CuttingProblem, type Lie, liesOf, mayLargerBeWorse, reachOf } from '../problem/cutting-problem';
import { normalPoints, pointAtOrAbove, rasterPoints } from './raster-points';

/** The ways to cut along one axis: cutting off point `first` leaves point `rest`; pairs for size i lie in `from[i] .. from[i + 1]`. */
interface AxisCuts {
  readonly points: Int32Array;
  readonly from: Int32Array;
  readonly first: Int32Array;
  readonly rest: Int32Array;
}

/** Where an item goes in the grid: the smallest cell that holds it. */
export interface CellItem {
  readonly lie: Lie;
  readonly column: number;
  readonly row: number;
}

/**
 * Sizes of piece worth looking at, and the cuts between them. `exact` grids keep every normal point and every cut, since there a bigger
 * piece may be worth less. Rows from `shortRows` on are taller than the tool cuts, so no upright cut divides them; columns likewise.
 */
export interface CuttingGrid {
  readonly problem: CuttingProblem;
  readonly across: AxisCuts;
  readonly up: AxisCuts;
  readonly items: readonly CellItem[];
  readonly exact: boolean;
  readonly shortColumns: number;
  readonly shortRows: number;
}

function layCuts(points: Int32Array, exact: boolean): AxisCuts {
  const from = new Int32Array(points.length + 1);
  const first: number[] = [];
  const rest: number[] = [];
  for (let i = 0; i < points.length; i++) {
    from[i] = first.length;
    const size = points[i]!;
    let k = 1;
    let below = i;
    for (; k < i; k++) {
      const piece = points[k]!;
      if (!exact && 2 * piece > size) break;
      const left = size - piece;
      while (points[below]! > left) below--;
      const last = first.length - 1;
      // The same rest beside a bigger first piece is never worse.
      if (!exact && last >= from[i]! && rest[last] === below) first[last] = k;
      else if (exact || below > 0) {
        first.push(k);
        rest.push(below);
      }
    }
  }
  from[points.length] = first.length;
  return { points, from, first: Int32Array.from(first), rest: Int32Array.from(rest) };
}

function layAxis(
  sizes: readonly number[],
  span: number,
  reach: number,
  exact: boolean,
  every: boolean,
): AxisCuts {
  const normal = normalPoints(sizes, span);
  if (!exact) return layCuts(every ? normal : rasterPoints(normal, span, reach), exact);
  return layCuts(normal.at(-1) === span ? normal : Int32Array.of(...normal, span), exact);
}

/**
 * The grid of a problem. The sheet itself is the last column and row. `every`: all normal points, so that each cell is right for its own
 * size and not only as part of the sheet.
 */
export function layGrid(problem: CuttingProblem, every = false): CuttingGrid {
  const lies = liesOf(problem);
  const exact = mayLargerBeWorse(problem);
  const reach = reachOf(problem);
  const widths = lies.map(({ width }) => width);
  const heights = lies.map(({ height }) => height);
  const across = layAxis(widths, problem.width, reach, exact, every);
  const up = layAxis(heights, problem.height, reach, exact, every);
  const items = lies.map((lie) => ({
    lie,
    column: pointAtOrAbove(across.points, lie.width),
    row: pointAtOrAbove(up.points, lie.height),
  }));
  return {
    problem,
    across,
    up,
    items,
    exact,
    shortColumns: withinReach(across.points, reach),
    shortRows: withinReach(up.points, reach),
  };
}

/** How many of ascending points the tool can cut along. */
function withinReach(points: Int32Array, reach: number): number {
  const beyond = points.findIndex((point) => point > reach);
  return beyond === -1 ? points.length : beyond;
}
