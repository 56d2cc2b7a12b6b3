import type { EventLine, FavorEvent, Paper, Tool } from '../../rows';
import { countOnSheet } from '../../yield/count-on-sheet';
import { cutFor as cutAgainFor } from '../../yield/hand-ways';
import { planSheets } from '../../yield/plan-sheets';
import type { CuttingTool, SheetPaper, SheetPart, SheetPlan } from '../../yield/types';
import { cuttingToolOf, sheetOfPaper } from '../buying/stock-rows';
import { spoiledSheets } from '../run/run-counts';
import type { PartOnPaper } from './event-parts';
import { remark } from './remarks';
import type { EventFinding, PlannedPaper } from './types';

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
    const demand = countAlike(cut);
    const fewestStrokes = planner(demand, sheet, cuttingToolOf(tool));
    const plan = cutFor
      ? cutAgainFor(cutFor, fewestStrokes, demand, sheet, cuttingToolOf(tool))
      : fewestStrokes;
    const spoiled = spoiledSheets(run, paper.id);
    planned.push({
      paperId: paper.id,
      name: paper.name,
      sheet,
      parts: cut,
      demand,
      plan,
      spoiled,
      ...(cutFor && { fewestStrokes }),
    });
    findings.push(...unplacedParts(plan, { sheet, parts: cut, demand }, tool));
  }
  return { papers: planned, findings };
}

const isAlike = (a: SheetPart, b: SheetPart): boolean =>
  a.across === b.across && a.up === b.up && a.grain === b.grain;

/** Parts of one size and one way of the grain are one demand, under the id of the first: the hands cut them alike, whatever box they are for. */
function countAlike(parts: readonly SheetPart[]): readonly SheetPart[] {
  const demand: SheetPart[] = [];
  for (const part of parts) {
    const at = demandOf(part, demand);
    const { id, across, up, grain, count } = part;
    if (at < 0) demand.push({ id, across, up, grain, count });
    else demand[at] = { ...demand[at]!, count: demand[at]!.count + count };
  }
  return demand;
}

/** Which demand a part is counted in; -1: none. */
export const demandOf = (part: SheetPart, demand: readonly SheetPart[]): number =>
  demand.findIndex((other) => isAlike(part, other));

function unplacedParts(
  plan: SheetPlan,
  { sheet, parts, demand }: Pick<PlannedPaper, 'sheet' | 'parts' | 'demand'>,
  tool: Tool | undefined,
): EventFinding[] {
  return parts
    .filter((part) => plan.unplaced.some((id) => id === demand[demandOf(part, demand)]?.id))
    .map((part) => {
      const loose = planSheets([{ ...part, count: 1, grain: 'free' }], sheet, cuttingToolOf(tool));
      const turned = sheet.oneWay ? 'part-fits-print-sideways' : 'part-fits-across-grain';
      const code = loose.unplaced.length === 0 ? turned : 'part-fits-no-sheet';
      const facts = { across: part.across, up: part.up, sheetAcross: sheet.across, sheetUp: sheet.up };
      return remark(code, part.id, part.name, facts);
    });
}

/**
 * Parts of lines that have a mix, on the papers that it names, in its order. What the mix does not cover, where more is made since, is cut from
 * the last whole paper it names; what it covers too much is left out. Papers that are gone are passed over.
 */
function placeMix(
  parts: readonly PartOnPaper[],
  lines: readonly EventLine[],
  papers: readonly Paper[],
): readonly PartOnPaper[] {
  return parts.flatMap((whole) => {
    const { part } = whole;
    const line = lines.find(({ id }) => id === part.lineId);
    const its = (line?.mix ?? []).filter(({ piece, paperId }) => `${part.lineId}.${piece}` === part.id && papers.some(({ id }) => id === paperId)); // biome-ignore format: one row
    if (its.length === 0) return [whole];
    let left = part.count;
    const shares = its.map(({ paperId, count }) => {
      const taken = Math.min(left, count);
      left -= taken;
      return { paperId, count: taken };
    });
    const last = shares.findLast(({ paperId }) => papers.find(({ id }) => id === paperId)?.offcutOfId === undefined); // biome-ignore format: one row
    if (last) last.count += left;
    else shares.push({ paperId: whole.paperId ?? '', count: left });
    return shares.filter(({ count }) => count > 0).map(({ paperId, count }) => ({ paperId, part: { ...part, count } })); // biome-ignore format: one row
  });
}

/**
 * Liners, layers, bands and tags moved to the offcuts that lie on the shelf from their own paper, the smallest offcut that holds one first,
 * never more than are on hand. Boxes are always cut from whole sheets. A part that is split stands in the list twice, its counts apart.
 */
export function takeOffcuts(
  parts: readonly PartOnPaper[],
  papers: readonly Paper[],
  tool: Tool | undefined,
): readonly PartOnPaper[] {
  const stock = papers
    .filter(({ offcutOfId, onHandSheets }) => offcutOfId !== undefined && onHandSheets > 0)
    .map((paper) => ({ paper, left: paper.onHandSheets }))
    .sort((a, b) => areaOf(a.paper) - areaOf(b.paper));
  if (stock.length === 0) return parts;
  const largestFirst = [...parts].sort((a, b) => sizeOf(b) - sizeOf(a));
  const moved = new Map<PartOnPaper, PartOnPaper[]>();
  for (const whole of largestFirst) {
    const { part, paperId } = whole;
    let rest = part.count;
    const pieces: PartOnPaper[] = [];
    for (const offcut of part.kind === 'box' ? [] : stock) {
      if (offcut.paper.offcutOfId !== paperId || offcut.left === 0 || rest === 0) continue;
      const { count: each } = countOnSheet(part, sheetOfPaper(offcut.paper), cuttingToolOf(tool));
      const taken = Math.min(rest, each * offcut.left);
      if (taken === 0) continue;
      pieces.push({ paperId: offcut.paper.id, part: { ...part, count: taken } });
      offcut.left -= Math.ceil(taken / each);
      rest -= taken;
    }
    if (pieces.length > 0) moved.set(whole, rest > 0 ? [...pieces, { paperId, part: { ...part, count: rest } }] : pieces); // biome-ignore format: one row
  }
  return parts.flatMap((part) => moved.get(part) ?? [part]);
}

const areaOf = ({ acrossMm, upMm }: Paper): number => acrossMm * upMm;

const sizeOf = ({ part }: PartOnPaper): number => part.across * part.up;
