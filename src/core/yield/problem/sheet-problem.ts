import type { CuttingTool, SheetPaper, SheetPart } from '../types';
import { type CuttingItem, type CuttingProblem, canTrim, isReachBinding, mayLargerBeWorse } from './cutting-problem'; // biome-ignore format: one line

/** Parts of one size that may lie alike, cut as one item. */
interface PartKind {
  readonly parts: readonly LaidPart[];
}

/** A part and how it lies in its item: turned or not for its grain's sake, or null, as it comes. */
export interface LaidPart {
  readonly part: SheetPart;
  readonly turned: boolean | null;
}

/**
 * A paper and its parts as a cutting problem. `unit` ticks make one unit; the sheet's corner after squaring lies at `x`, `y`; `across` and
 * `up` are its ticks with one kerf added, as every item has (the usual transform for kerf).
 */
export interface SheetProblem {
  readonly problem: CuttingProblem;
  readonly kinds: readonly PartKind[];
  readonly unit: number;
  readonly kerf: number;
  /** Longest cut in ticks, one kerf added; infinite where the tool cuts any length. */
  readonly reach: number;
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly up: number;
  /** Parts too big for this paper. */
  readonly unplaced: readonly string[];
}

const commonMeasure = (a: number, b: number): number => (b === 0 ? a : commonMeasure(b, a % b));

/** How a part must lie: null, free; else whether it is turned a quarter so that its grain follows the paper's. */
const mustTurn = (part: SheetPart, paper: SheetPaper): boolean | null =>
  part.grain === 'free' || paper.grain === 'none' ? null : part.grain !== paper.grain;

type OpenKind = CuttingItem & PartKind;

function gatherKinds(parts: readonly SheetPart[], paper: SheetPaper, kerf: number): OpenKind[] {
  const kinds = new Map<string, OpenKind>();
  for (const part of parts) {
    const turned = mustTurn(part, paper);
    const lying = turned ?? part.across < part.up;
    const width = (lying ? part.up : part.across) + kerf;
    const height = (lying ? part.across : part.up) + kerf;
    const turns = turned === null;
    const key = `${width} ${height} ${turns}`;
    const kind = kinds.get(key) ?? { width, height, turns, demand: 0, parts: [] };
    kinds.set(key, { ...kind, demand: kind.demand + part.count, parts: [...kind.parts, { part, turned }] });
  }
  return [...kinds.values()];
}

/** Squaring is cuts too: along the whole sheet one way, then along what is left of it. */
function canSquare({ across, up, squaring: { left, right, near, far } }: SheetPaper, reach: number): boolean {
  const upright = left + right > 0;
  const level = near + far > 0;
  const uprightFirst = (!upright || up <= reach) && (!level || across - left - right <= reach);
  const levelFirst = (!level || across <= reach) && (!upright || up - near - far <= reach);
  return uprightFirst || levelFirst;
}

/** Whether an item can be cut from a sheet at all; one that is the whole sheet needs no cut and fits any tool. */
const fits = ({ width, height, turns }: CuttingItem, across: number, up: number, reach: number): boolean =>
  [{ width, height }, ...(turns ? [{ width: height, height: width }] : [])].some(
    (lie) => lie.width <= across && lie.height <= up && canTrim(across, up, lie, reach),
  );

/** The cutting problem of one paper. Parts wanted 0 times are left out; parts that fit no sheet are named in `unplaced`. */
export function layProblem(parts: readonly SheetPart[], paper: SheetPaper, tool: CuttingTool): SheetProblem {
  const { kerf } = tool;
  const { left, right, near, far } = paper.squaring;
  const across = paper.across - left - right + kerf;
  const up = paper.up - near - far + kerf;
  const reach = tool.longestCut === null ? Number.POSITIVE_INFINITY : tool.longestCut + kerf;
  const squares = tool.longestCut === null || canSquare(paper, tool.longestCut);
  const wanted = gatherKinds(parts.filter((part) => part.count > 0), paper, kerf); // biome-ignore format: one line
  const kinds = squares ? wanted.filter((kind) => fits(kind, across, up, reach)) : [];
  const whole: CuttingProblem = {
    width: Math.max(across, 0),
    height: Math.max(up, 0),
    items: kinds.map(({ width, height, turns, demand }) => ({ width, height, turns, demand })),
    longestCut: Number.isFinite(reach) ? reach : null,
    stages: tool.stages,
  };
  const unit = unitOf(whole);
  return {
    problem: scale(whole, unit),
    kinds,
    unit,
    kerf,
    reach,
    x: left,
    y: near,
    across,
    up,
    unplaced: wanted
      .filter((kind) => !kinds.includes(kind))
      .flatMap((kind) => kind.parts.map(({ part }) => part.id)),
  };
}

/** The common measure of the items; the sheet's shorter side counts too where an item as wide as the sheet needs no cut along its length. */
function unitOf(problem: CuttingProblem): number {
  if (mayLargerBeWorse(problem)) return 1;
  const lengths = problem.items.flatMap(({ width, height }) => [width, height]);
  if (isReachBinding(problem)) lengths.push(Math.min(problem.width, problem.height));
  return Math.max(1, lengths.reduce(commonMeasure, 0));
}

const scale = (problem: CuttingProblem, unit: number): CuttingProblem => ({
  ...problem,
  width: Math.floor(problem.width / unit),
  height: Math.floor(problem.height / unit),
  items: problem.items.map((item) => ({ ...item, width: item.width / unit, height: item.height / unit })),
  longestCut: isReachBinding(problem) ? Math.floor(problem.longestCut! / unit) : null,
});
