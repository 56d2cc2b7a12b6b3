import type { CuttingTool, Layout, PlacedPart, SheetPaper, SheetPart, SheetPlan } from '../types';
import { type Card, replayCuts } from './replay-cuts';

/**
 * Everything wrong with a plan, as words for a developer; empty means that the sheets can be cut and give what was asked. Written from the
 * contract alone: it shares no line with the solver.
 */
export function checkPlan(
  plan: SheetPlan,
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
): string[] {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const faults = plan.layouts.flatMap((layout, i) =>
    checkLayout(layout, byId, paper, tool).map((fault) => `layout ${i}: ${fault}`),
  );
  const sheets = plan.layouts.reduce((sum, layout) => sum + layout.sheets, 0);
  if (sheets !== plan.sheets) faults.push(`layouts use ${sheets} sheets, the plan says ${plan.sheets}`);
  if (plan.lowerBound > plan.sheets) faults.push('the bound is above the plan');
  if (plan.proven !== (plan.lowerBound === plan.sheets))
    faults.push('"proven" does not follow from the bound');
  for (const part of parts) {
    const cut = plan.layouts.reduce((sum, layout) => sum + layout.sheets * countOf(layout, part.id), 0);
    if (plan.unplaced.includes(part.id)) {
      if (cut > 0) faults.push(`${part.id} is cut and called unplaced`);
      if (plainlyFits(part, paper, tool)) faults.push(`${part.id} fits and is called unplaced`);
    } else if (cut < part.count) faults.push(`${cut} of ${part.count} ${part.id}`);
  }
  return faults;
}

const countOf = (layout: Layout, id: string): number => layout.parts.filter(({ part }) => part === id).length;

function checkLayout(
  layout: Layout,
  byId: ReadonlyMap<string, SheetPart>,
  paper: SheetPaper,
  tool: CuttingTool,
): string[] {
  const replay = replayCuts(layout.tree, paper, tool);
  const faults = [...replay.faults];
  if (!(Number.isSafeInteger(layout.sheets) && layout.sheets > 0)) faults.push(`cut ${layout.sheets} times`);
  const cut = replay.parts.map(describe).sort();
  const drawn = layout.parts.map(describe).sort();
  if (cut.join('|') !== drawn.join('|')) faults.push('the cuts do not give the parts that are drawn');
  for (const placed of layout.parts) faults.push(...checkPlaced(placed, byId.get(placed.part), paper));
  const pieces: Card[] = [...layout.parts, ...layout.offcuts];
  for (const [i, a] of pieces.entries())
    for (const b of pieces.slice(i + 1)) if (overlap(a, b)) faults.push(`pieces overlap at ${a.x}, ${a.y}`);
  for (const piece of pieces) if (!isInside(piece, paper)) faults.push(`piece off the squared sheet at ${piece.x}, ${piece.y}`); // biome-ignore format: one line
  return faults;
}

const describe = ({
  part,
  x,
  y,
  across,
  up,
  turned,
}: Omit<PlacedPart, 'x' | 'y' | 'across' | 'up'> & Card): string =>
  [part, x, y, across, up, turned].join(' ');

function checkPlaced(placed: PlacedPart, part: SheetPart | undefined, paper: SheetPaper): string[] {
  if (part === undefined) return [`unknown part ${placed.part}`];
  const faults: string[] = [];
  const [across, up] = placed.turned ? [part.up, part.across] : [part.across, part.up];
  if (placed.across !== across || placed.up !== up)
    faults.push(`${part.id} is cut ${placed.across} × ${placed.up}`);
  const grainLies = placed.turned ? (part.grain === 'across' ? 'up' : 'across') : part.grain;
  if (part.grain !== 'free' && paper.grain !== 'none' && grainLies !== paper.grain)
    faults.push(`${part.id} lies against its grain`);
  return faults;
}

const overlap = (a: Card, b: Card): boolean =>
  a.x < b.x + b.across && b.x < a.x + a.across && a.y < b.y + b.up && b.y < a.y + a.up;

function isInside({ x, y, across, up }: Card, paper: SheetPaper): boolean {
  const { left, right, near, far } = paper.squaring;
  return x >= left && y >= near && x + across <= paper.across - right && y + up <= paper.up - far;
}

/** Whether a part goes on the sheet whatever the tool: without limit of reach only. */
function plainlyFits(part: SheetPart, paper: SheetPaper, tool: CuttingTool): boolean {
  if (part.count === 0 || tool.longestCut !== null) return false;
  const { left, right, near, far } = paper.squaring;
  const [across, up] = [paper.across - left - right, paper.up - near - far];
  const straight = part.across <= across && part.up <= up;
  const turned = part.up <= across && part.across <= up;
  if (part.grain === 'free' || paper.grain === 'none') return straight || turned;
  return part.grain === paper.grain ? straight : turned;
}
