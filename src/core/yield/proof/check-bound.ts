import type { BoundProof, CaseProof, CuttingTool, SheetPaper, SheetPart } from '../types';
import { checkCases } from './check-cases';
import { groupParts } from './group-parts';
import { listLayouts } from './list-layouts';
import { mostPoints } from './most-points';

/**
 * Whether a bound follows from its points, all in whole numbers: no sheet holds more than `most`, and the parts that fit at all are worth
 * more than one sheet less than `sheets` could hold. Answers what is wrong, or null; stopped, a proof does not pass.
 */
export function checkBound(
  proof: BoundProof,
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
  unplaced: readonly string[] = [],
  shouldStop: () => boolean = () => false,
): string | null {
  const placed = parts.filter(({ id }) => !unplaced.includes(id));
  const most = isByArea(proof, placed, paper)
    ? proof.most
    : mostPoints(proof.points, placed, paper, tool, shouldStop);
  if (!Number.isFinite(most)) return 'the points on a sheet were not counted in time';
  if (most > proof.most) return `a sheet can hold ${most} points, the proof says ${proof.most}`;
  const total = placed.reduce(
    (sum, { id, count }) => sum + BigInt(proof.points[id] ?? 0) * BigInt(count),
    0n,
  );
  if (proof.cases !== undefined)
    return checkByCases(proof, proof.cases, placed, paper, tool, total, shouldStop);
  if (total <= BigInt(proof.most) * BigInt(proof.sheets - 1))
    return `${total} points need no ${proof.sheets} sheets of ${proof.most}`;
  return null;
}

/** Whether each part's share of a sheet's points is no more than its share of the squared sheet's area: then no cutting holds more than `most`. */
function isByArea({ points, most }: BoundProof, parts: readonly SheetPart[], paper: SheetPaper): boolean {
  const area = BigInt(squaredArea(paper));
  return parts.every(
    ({ id, across, up }) => BigInt(points[id] ?? 0) * area <= BigInt(across * up) * BigInt(most),
  );
}

const squaredArea = ({ across, up, squaring: { left, right, near, far } }: SheetPaper): number =>
  (across - left - right) * (up - near - far);

/** As far as the points go, then case by case; the layouts are counted again here. Only for free turns and a tool that reaches along one side. */
function checkByCases(
  { points, most, sheets }: BoundProof,
  cases: CaseProof,
  placed: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
  total: bigint,
  shouldStop: () => boolean,
): string | null {
  const { left, right, near, far } = paper.squaring;
  const width = paper.across - left - right + tool.kerf;
  const height = paper.up - near - far + tool.kerf;
  const reach = tool.longestCut === null ? Number.POSITIVE_INFINITY : tool.longestCut + tool.kerf;
  if (tool.stages !== 'free' || reach < Math.min(width, height))
    return 'cases are counted for free cuts alone, within reach along one side at least';
  const least = total - BigInt(most) * BigInt(sheets - 2);
  if (least !== BigInt(cases.least)) return `a layout needs ${least} points, the proof says ${cases.least}`;
  const groups = groupParts(placed, paper, tool.kerf, points);
  const asked = [{ points: groups.map((group) => group.points), least: cases.least }];
  const layouts = listLayouts(groups, { across: width, up: height, reach }, asked, shouldStop);
  if (layouts === null) return 'more layouts than can be counted now';
  if (layouts.length !== cases.layouts) return `${layouts.length} layouts, the proof says ${cases.layouts}`;
  return checkCases(cases, groups, layouts, sheets - 1);
}
