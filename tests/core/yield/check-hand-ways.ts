import { checkPlan } from '../../../src/core/yield/proof/check-plan';
import type {
  CutTree,
  CuttingTool,
  Layout,
  SheetPaper,
  SheetPart,
  SheetPlan,
} from '../../../src/core/yield/types';

/** A way as it is shown: its plan and the figures beside it. */
interface ShownWay {
  readonly aim: 'strokes' | 'fences' | 'offcut';
  readonly plan: SheetPlan;
  readonly work: {
    readonly layouts: number;
    readonly strokes: number;
    readonly fences: number;
    readonly offcut: { readonly across: number; readonly up: number } | null;
  };
}

/**
 * Everything wrong with ways to cut one plan, as words for a developer: each can be cut and gives what was asked on as many sheets, its figures
 * are those counted here off its tree, and it is better in its own aim than the first. Shares no line with whoever found them.
 */
export function checkHandWays(
  ways: readonly ShownWay[],
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
): string[] {
  const [first, ...others] = ways;
  if (first === undefined) return ['no way at all'];
  const faults = ways.flatMap(({ aim, plan, work }) => {
    const counted = countWork(plan, paper, tool);
    const own = checkPlan(plan, parts, paper, tool);
    if (plan.sheets !== first.plan.sheets) own.push(`${plan.sheets} sheets, not ${first.plan.sheets}`);
    for (const figure of ['layouts', 'strokes', 'fences'] as const)
      if (work[figure] !== counted[figure]) own.push(`${work[figure]} ${figure}, counted ${counted[figure]}`);
    if ((work.offcut?.across ?? 0) * (work.offcut?.up ?? 0) !== counted.area)
      own.push(`the largest offcut is not of ${counted.area}`);
    return own.map((fault) => `${aim}: ${fault}`);
  });
  const usual = countWork(first.plan, paper, tool);
  for (const { aim, plan } of others) {
    const { fences, area } = countWork(plan, paper, tool);
    if (aim === 'fences' && fences >= usual.fences) faults.push('fences: no fewer settings');
    if (aim === 'offcut' && area <= usual.area) faults.push('offcut: no larger piece left');
  }
  return faults;
}

function countWork({ layouts }: SheetPlan, paper: SheetPaper, tool: CuttingTool) {
  const each = layouts.map((layout) => countLayout(layout, paper, tool));
  return {
    layouts: layouts.length,
    strokes: each.reduce((sum, { strokes }) => sum + strokes, 0),
    fences: each.reduce((sum, { settings }) => sum + settings, 0),
    area: Math.max(0, ...each.map(({ area }) => area)),
  };
}

/** Squaring first, then every cut of the tree: the piece against the fence is the first, unless that is waste. */
function countLayout({ sheets, tree }: Layout, paper: SheetPaper, tool: CuttingTool) {
  const { left, right, near, far } = paper.squaring;
  const [across, up] = [paper.across - left - right, paper.up - near - far];
  const settings = [
    ...(left > 0 ? [paper.across - left] : []),
    ...(right > 0 ? [across] : []),
    ...(near > 0 ? [paper.up - near] : []),
    ...(far > 0 ? [up] : []),
  ] as number[];
  let area = 0;
  const visit = (node: CutTree, x: number, y: number, wide: number, high: number): void => {
    if (node.kind === 'offcut') area = Math.max(area, wide * high);
    if (node.kind !== 'cut') return;
    const upright = node.way === 'upright';
    const one = node.at - (upright ? x : y);
    const other = Math.max(0, (upright ? wide : high) - one - tool.kerf);
    settings.push(node.first.kind === 'offcut' ? other : one);
    visit(node.first, x, y, upright ? one : wide, upright ? high : one);
    const on = node.at + tool.kerf;
    visit(node.second, upright ? on : x, upright ? y : on, upright ? other : wide, upright ? high : other);
  };
  visit(tree, left, near, across, up);
  const rounds = Math.ceil(sheets / Math.max(1, tool.stack));
  return { strokes: settings.length * rounds, settings: new Set(settings).size, area };
}
