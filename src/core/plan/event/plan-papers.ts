import type { FavorEvent, Paper, Tool } from '../../rows';
import { cutFor as cutAgainFor } from '../../yield/hand-ways';
import { planSheets } from '../../yield/plan-sheets';
import type { CuttingTool, SheetPaper, SheetPart, SheetPlan } from '../../yield/types';
import { cuttingToolOf, sheetOfPaper } from '../buying/stock-rows';
import { spoiledSheets } from '../run/run-counts';
import type { PartOnPaper } from './event-parts';
import { remark } from './remarks';
import type { EventFinding, PlannedPaper } from './types';
import { placeMix } from './use-mix';
import { takeOffcuts } from './use-offcuts';

/** How parts are cut from one paper; the solver, or one with its effort or progress already chosen. */
export type SheetPlanner = (parts: readonly SheetPart[], paper: SheetPaper, tool: CuttingTool) => SheetPlan;

/** Parts gathered by paper, offcuts on hand first, mixes as their lines say, each paper planned by itself and cut for what the event puts first. Parts without a paper, or too big for theirs, are told of. */
export function planPapers(
  parts: readonly PartOnPaper[],
  papers: readonly Paper[],
  tool: Tool | undefined,
  { lines, run, cutFor }: Pick<FavorEvent, 'lines' | 'run' | 'cutFor'>,
  planner: SheetPlanner = planSheets,
): { readonly papers: readonly PlannedPaper[]; readonly findings: readonly EventFinding[] } {
  const planned: PlannedPaper[] = [];
  const findings = parts
    .filter(({ paperId }) => !papers.some(({ id }) => id === paperId))
    .map(({ part }) => remark('paper-missing', part.id, part.name, { across: part.across, up: part.up }));
  // A mix says itself what comes from offcuts.
  const placed = lines.some(({ mix }) => mix !== undefined) ? placeMix(parts, lines, papers) : takeOffcuts(parts, papers, tool); // biome-ignore format: one row
  for (const paper of papers) {
    const cut = placed.filter(({ paperId }) => paperId === paper.id).map(({ part }) => part);
    if (cut.length === 0) continue;
    const sheet = sheetOfPaper(paper);
    const fewestStrokes = planner(cut, sheet, cuttingToolOf(tool));
    const plan = cutFor ? cutAgainFor(cutFor, fewestStrokes, cut, sheet, cuttingToolOf(tool)) : fewestStrokes;
    const spoiled = spoiledSheets(run, paper.id);
    planned.push({
      paperId: paper.id,
      name: paper.name,
      sheet,
      parts: cut,
      plan,
      spoiled,
      ...(cutFor && { fewestStrokes }),
    });
    findings.push(...unplacedParts(plan, { sheet, parts: cut }, tool));
  }
  return { papers: planned, findings };
}

function unplacedParts(
  plan: SheetPlan,
  { sheet, parts }: Pick<PlannedPaper, 'sheet' | 'parts'>,
  tool: Tool | undefined,
): EventFinding[] {
  return parts
    .filter(({ id }) => plan.unplaced.includes(id))
    .map((part) => {
      const loose = planSheets([{ ...part, count: 1, grain: 'free' }], sheet, cuttingToolOf(tool));
      const turned = sheet.oneWay ? 'part-fits-print-sideways' : 'part-fits-across-grain';
      const code = loose.unplaced.length === 0 ? turned : 'part-fits-no-sheet';
      const facts = { across: part.across, up: part.up, sheetAcross: sheet.across, sheetUp: sheet.up };
      return remark(code, part.id, part.name, facts);
    });
}
