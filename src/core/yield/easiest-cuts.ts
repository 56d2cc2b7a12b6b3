import { sequenceCuts } from './cut-sequence';
import { buildBlocks } from './knapsack/build-blocks';
import { type BlockSizes, layBlockSizes, workAround } from './knapsack/outer-bound';
import { layTree } from './layout';
import { type PatternTree, patternOf } from './pattern/pattern';
import { isReachBinding } from './problem/cutting-problem';
import type { SheetProblem } from './problem/sheet-problem';
import type { Effort } from './stock/effort';
import type { NamedUse } from './stock/name-parts';
import type { CuttingTool, Layout, SheetPaper } from './types';

/** What a layout costs the hands: fewer strokes first, then fewer fence settings, then a larger offcut. */
interface HandWork {
  readonly strokes: number;
  readonly fences: number;
  readonly offcut: number;
}

const ROOM = 1200; // Blocks kept while other ways to cut one content are looked for. source: our own, measured
const WORK = 2e6; // Steps that the sums around blocks of one problem may take; beyond this the first way stays.

/** A use laid the way its tree says. */
export function layUse({ tree, names, sheets }: NamedUse, sheet: SheetProblem): Layout {
  const next = names.map((parts) => parts.values());
  return { sheets, ...layTree(tree, sheet, (item) => next[item]!.next().value!) };
}

/** Lays plans so that they are easy to cut: of several ways to cut the same content, the one that costs the hands least. */
export class EasiestCuts {
  private readonly sheet: SheetProblem;
  private readonly paper: SheetPaper;
  private readonly tool: CuttingTool;
  private readonly sizes: BlockSizes | null;

  constructor(sheet: SheetProblem, paper: SheetPaper, tool: CuttingTool) {
    this.sheet = sheet;
    this.paper = paper;
    this.tool = tool;
    const { problem } = sheet;
    const sizes = problem.stages === 'free' && !isReachBinding(problem) ? layBlockSizes(problem) : null;
    const work = sizes === null ? 0 : workAround(sizes);
    this.sizes = work <= WORK ? sizes : null;
  }

  /** The layout of a use, cut the easiest way that was found. */
  lay(use: NamedUse, effort: Effort): Layout {
    let best: Layout | null = null;
    let least: HandWork | null = null;
    for (const tree of [use.tree, ...this.otherTrees(use.tree, effort)]) {
      const layout = layUse({ ...use, tree }, this.sheet);
      const work = this.workOf(layout);
      if (least !== null && !isEasier(work, least)) continue;
      best = layout;
      least = work;
    }
    return best!;
  }

  private workOf(layout: Layout): HandWork {
    const { strokes, fences } = sequenceCuts(layout, this.paper, this.tool);
    const [largest] = layout.offcuts;
    return {
      strokes,
      fences: fences.length,
      offcut: largest === undefined ? 0 : largest.across * largest.up,
    };
  }

  /** Trees of the same content that take up other room on the sheet. */
  private otherTrees(tree: PatternTree, effort: Effort): PatternTree[] {
    if (this.sizes === null || effort.isSpent()) return [];
    const items = this.sheet.problem.items.length;
    const { counts } = patternOf(tree, items);
    const total = counts.reduce((sum, count) => sum + count, 0);
    if (total < 2) return [];
    const ones = counts.map(() => 1);
    const none = counts.map(() => 0);
    const question = { sizes: this.sizes, values: ones, demands: counts, discounts: [none], above: total - 0.5, every: true, room: ROOM }; // biome-ignore format: one line
    return buildBlocks(question, effort).all.flatMap((found) => (found.tree === null ? [] : [found.tree]));
  }
}

const isEasier = (a: HandWork, b: HandWork): boolean =>
  a.strokes - b.strokes < 0 ||
  (a.strokes === b.strokes && (a.fences < b.fences || (a.fences === b.fences && a.offcut > b.offcut)));
