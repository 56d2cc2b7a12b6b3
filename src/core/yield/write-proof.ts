import type { SheetProblem } from './problem/sheet-problem';
import type { CaseNode } from './stock/case-search';
import type { PointsBound } from './stock/points-bound';
import type { CasesBound } from './stock/settle-cases';
import type { StockPlan } from './stock/solve-stock';
import type { BoundProof, CaseTree, SheetPaper, SheetPart } from './types';

/** The best bound of a plan with its reasons, told by part; null before anything is known. */
export function writeProof({ bound, cases }: StockPlan, sheet: SheetProblem): BoundProof | null {
  if (cases !== null && cases.sheets > (bound?.sheets ?? 0)) return writeCases(cases, sheet);
  return bound === null ? null : writePoints(bound, sheet);
}

/** A bound by points alone. */
export const writePoints = ({ points, most, sheets }: PointsBound, sheet: SheetProblem): BoundProof => ({
  points: byPart(points, sheet),
  most,
  sheets,
});

/** A bound by area, which is counted again at once: every part's points are its area, over their common measure. */
export function writeArea(parts: readonly SheetPart[], paper: SheetPaper): BoundProof {
  const { left, right, near, far } = paper.squaring;
  const sheet = (paper.across - left - right) * (paper.up - near - far);
  const per = parts.reduce((common, { across, up }) => commonMeasure(common, across * up), sheet);
  const total = parts.reduce((sum, { across, up, count }) => sum + ((across * up) / per) * count, 0);
  const most = sheet / per;
  return {
    points: Object.fromEntries(parts.map(({ id, across, up }) => [id, (across * up) / per])),
    most,
    sheets: Math.ceil(total / most),
  };
}

const commonMeasure = (a: number, b: number): number => (b === 0 ? a : commonMeasure(b, a % b));

/** Every part of a kind gets the figure of its kind. */
const byPart = (figures: readonly number[], { kinds }: SheetProblem): Record<string, number> =>
  Object.fromEntries(
    kinds.flatMap(({ parts }, item) => parts.map(({ part }) => [part.id, figures[item] ?? 0])),
  );

function writeCases(cases: CasesBound, sheet: SheetProblem): BoundProof {
  const { points, most, sheets, patterns, root } = cases;
  const write = (node: CaseNode): CaseTree => {
    if ('points' in node) {
      const { points, rows = [] } = node;
      const rounded = rows.map((row) => ({ ...row, times: byPart(row.times, sheet) }));
      return { points: byPart(points, sheet), ...(rounded.length > 0 && { rows: rounded }) };
    }
    const { counts } = patterns[node.pattern]!;
    const layout = Object.fromEntries(
      sheet.kinds.flatMap(({ parts: [first] }, item) =>
        first === undefined || counts[item] === 0 ? [] : [[first.part.id, counts[item] ?? 0]],
      ),
    );
    return { layout, atMost: node.atMost, less: write(node.less), more: write(node.more) };
  };
  const total = points.reduce((sum, each, item) => sum + each * (sheet.problem.items[item]?.demand ?? 0), 0);
  const least = total - (sheets - 2) * most;
  return {
    points: byPart(points, sheet),
    most,
    sheets,
    cases: { least, layouts: patterns.length, tree: write(root) },
  };
}
