import type { CutTree, CuttingTool, SheetPaper } from '../types';

/** A rectangle of real card in the sheet's frame, ticks. */
export interface Card {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly up: number;
}

interface ReplayedPart extends Card {
  readonly part: string;
  readonly turned: boolean;
}

export interface Replay {
  readonly parts: readonly ReplayedPart[];
  /** What went wrong, in words for a developer; empty if the cuts can be made. */
  readonly faults: readonly string[];
}

/** Cuts a sheet by its tree, one cut after another, and answers the parts that come out. Knows nothing of how the tree was found. */
export function replayCuts(tree: CutTree, paper: SheetPaper, tool: CuttingTool): Replay {
  const { left, right, near, far } = paper.squaring;
  const squared: Card = { x: left, y: near, across: paper.across - left - right, up: paper.up - near - far };
  const faults: string[] = [...squareFaults(paper, tool)];
  const parts: ReplayedPart[] = [];
  const reach = tool.longestCut ?? Number.POSITIVE_INFINITY;

  const visit = (node: CutTree, card: Card): void => {
    if (node.kind === 'part') parts.push({ ...card, part: node.part, turned: node.turned });
    if (node.kind !== 'cut') return;
    const upright = node.way === 'upright';
    const [start, end] = upright ? [card.x, card.x + card.across] : [card.y, card.y + card.up];
    const length = upright ? card.up : card.across;
    if (!(node.at > start && node.at < end)) faults.push(`cut at ${node.at} outside ${start}..${end}`);
    if (length > reach) faults.push(`cut ${length} long, the tool reaches ${reach}`);
    const on = node.at + tool.kerf;
    const first = upright ? { ...card, across: node.at - start } : { ...card, up: node.at - start };
    const second = upright
      ? { ...card, x: on, across: Math.max(0, end - on) }
      : { ...card, y: on, up: Math.max(0, end - on) };
    visit(node.first, first);
    visit(node.second, second);
  };
  visit(tree, squared);
  if (tool.stages !== 'free' && countStages(tree) > tool.stages)
    faults.push(`more than ${tool.stages} stages`);
  return { parts, faults };
}

function squareFaults(paper: SheetPaper, { longestCut }: CuttingTool): string[] {
  if (longestCut === null) return [];
  const { left, right, near, far } = paper.squaring;
  const [upright, level] = [left + right > 0, near + far > 0];
  const uprightFirst =
    !(upright && paper.up > longestCut) && !(level && paper.across - left - right > longestCut);
  const levelFirst =
    !(level && paper.across > longestCut) && !(upright && paper.up - near - far > longestCut);
  return uprightFirst || levelFirst ? [] : ['squaring cut longer than the tool reaches'];
}

/** A part with nothing but trimming around it; trimming is not a stage of its own. */
function isTrimmedPart(node: CutTree): boolean {
  if (node.kind === 'part') return true;
  if (node.kind !== 'cut') return false;
  return (
    (node.second.kind === 'offcut' && isTrimmedPart(node.first)) ||
    (node.first.kind === 'offcut' && isTrimmedPart(node.second))
  );
}

/** Most changes of direction on the way to any part, the first direction counted, trimming of a single part not. */
export function countStages(tree: CutTree, way: string | null = null): number {
  if (tree.kind !== 'cut' || isTrimmedPart(tree)) return 0;
  const deeper = Math.max(countStages(tree.first, tree.way), countStages(tree.second, tree.way));
  return deeper + (tree.way === way ? 0 : 1);
}
