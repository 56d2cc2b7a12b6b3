import { countOnSheet, type SheetCount } from './count-on-sheet';
import { layTree } from './layout';
import { joinPieces, type PatternTree } from './pattern/pattern';
import { type CuttingProblem, isReachBinding, type Lie, liesOf } from './problem/cutting-problem';
import { layProblem } from './problem/sheet-problem';
import type { CuttingTool, SheetPaper, SheetPart } from './types';

/** A count that can be shown now; `exact`: no cutting gets more, so that nothing is left to be looked for. */
export interface CountInSight extends SheetCount {
  readonly exact: boolean;
}

/** Steps of a count that is made at once: some tenths of a millisecond. source: our own, measured at about 1 ns a step */
const LIGHT_STEPS = 2e5;

/**
 * How many of one part a sheet gives, as far as can be said in far less than a frame: exactly where the count is light, or where rows all
 * lying one way use up the area; else those rows, which can be cut but may not be the most. `countOnSheet` says the most.
 */
export function countAtOnce(
  part: Omit<SheetPart, 'count'>,
  paper: SheetPaper,
  tool: CuttingTool,
): CountInSight {
  const sheet = layProblem([{ ...part, count: 1 }], paper, tool);
  const { problem } = sheet;
  if (stepsOf(problem) <= LIGHT_STEPS) return { ...countOnSheet(part, paper, tool), exact: true };
  const [laid] = sheet.kinds[0]?.parts ?? [];
  const lies = liesOf(problem);
  const [best] = lies.map((lie) => rowsOf(problem, lie)).sort((a, b) => b.count - a.count);
  if (laid === undefined || !best?.tree) return { count: 0, layout: null, exact: false };
  const layout = { sheets: 1, ...layTree(best.tree, sheet, () => laid) };
  const exact = (lies.length === 1 && !isReachBinding(problem)) || best.count === mostByArea(problem);
  return { count: best.count, layout, exact };
}

/** Steps the exact count would take, roughly and rather too many: sizes that sums of the part's two sides can make, and the cuts between them. */
function stepsOf(problem: CuttingProblem): number {
  const { width: span, height: depth, items, stages } = problem;
  const [item] = items;
  if (item === undefined) return 0;
  const { width, height, turns } = item;
  const sums = (length: number): number =>
    (length / width + 1) * (length / height + 1) - (length * length) / (2 * width * height);
  const columns = Math.min(span, turns ? sums(span) : span / width);
  const rows = Math.min(depth, turns ? sums(depth) : depth / height);
  const cuts = (points: number): number => (points * points) / (isReachBinding(problem) ? 2 : 4);
  return (cuts(columns) * rows + cuts(rows) * columns) * (stages === 'free' ? 1 : 2 * stages);
}

const mostByArea = ({ width, height, items: [item] }: CuttingProblem): number =>
  item === undefined ? 0 : Math.floor((width * height) / (item.width * item.height));

/** Every copy lying the same way; nothing where the tool cannot reach along whole rows or whole columns. */
function rowsOf(
  { width, height, longestCut }: CuttingProblem,
  { item, turned, ...lie }: Lie,
): { readonly count: number; readonly tree: PatternTree | null } {
  const reach = longestCut ?? Number.POSITIVE_INFINITY;
  const across = Math.floor(width / lie.width);
  const up = Math.floor(height / lie.height);
  const one: PatternTree = { kind: 'item', item, turned };
  if (height <= reach) return { count: across * up, tree: repeat(repeat(one, up, false), across, true) };
  if (width <= reach) return { count: across * up, tree: repeat(repeat(one, across, true), up, false) };
  return { count: 0, tree: null };
}

const repeat = (tree: PatternTree | null, times: number, upright: boolean): PatternTree | null =>
  Array.from({ length: times }, () => tree).reduce<PatternTree | null>(
    (joined, next) => joinPieces(upright, joined, next),
    null,
  );
