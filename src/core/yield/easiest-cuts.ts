import { sequenceCuts } from './cut-sequence';
import { buildBlocks } from './knapsack/build-blocks';
import { type BlockSizes, layBlockSizes, workAround } from './knapsack/outer-bound';
import { layTree } from './layout';
import { patternOf } from './pattern/pattern';
import { isReachBinding } from './problem/cutting-problem';
import type { SheetProblem } from './problem/sheet-problem';
import type { Effort } from './stock/effort';
import type { NamedUse } from './stock/name-parts';
import type { CuttingTool, Layout, SheetPaper } from './types';

/** What matters most to the hands among ways to cut the same content; the other two follow in this order. */
export const HAND_AIMS = ['strokes', 'fences', 'offcut'] as const;
export type HandAim = (typeof HAND_AIMS)[number];

/** What a layout costs the hands; the offcut is the largest single one, in square ticks. */
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
    const { counts } = patternOf(use.tree, this.sheet.problem.items.length);
    return this.easiest([layUse(use, this.sheet), ...this.others(use, counts, effort)], 'strokes');
  }

  /** A layout cut again so that `aim` comes first; itself where nothing better was found. */
  layAgain(layout: Layout, aim: HandAim, effort: Effort): Layout {
    const names = this.sheet.kinds.map(({ parts }) =>
      layout.parts.flatMap(({ part }) => parts.find((laid) => laid.part.id === part) ?? []),
    );
    const counts = names.map(({ length }) => length);
    return this.easiest([layout, ...this.others({ names, sheets: layout.sheets }, counts, effort)], aim);
  }

  /** Of layouts with one content, the first that no other beats. */
  private easiest(layouts: readonly Layout[], aim: HandAim): Layout {
    let best = layouts[0]!;
    let least = this.workOf(best);
    for (const layout of layouts.slice(1)) {
      const work = this.workOf(layout);
      if (!isEasier(work, least, aim)) continue;
      best = layout;
      least = work;
    }
    return best;
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

  /** Layouts of the same content that take up other room on the sheet. */
  private others(use: Omit<NamedUse, 'tree'>, counts: readonly number[], effort: Effort): Layout[] {
    if (this.sizes === null || effort.isSpent()) return [];
    const total = counts.reduce((sum, count) => sum + count, 0);
    if (total < 2) return [];
    const ones = counts.map(() => 1);
    const none = counts.map(() => 0);
    const question = { sizes: this.sizes, values: ones, demands: counts, discounts: [none], above: total - 0.5, every: true, room: ROOM }; // biome-ignore format: one line
    return buildBlocks(question, effort).all.flatMap(({ tree }) =>
      tree === null ? [] : [layUse({ ...use, tree }, this.sheet)],
    );
  }
}

/** The three figures, the aim's first; smaller is easier. */
function ranked({ strokes, fences, offcut }: HandWork, aim: HandAim): readonly number[] {
  if (aim === 'fences') return [fences, strokes, -offcut];
  return aim === 'offcut' ? [-offcut, strokes, fences] : [strokes, fences, -offcut];
}

function isEasier(a: HandWork, b: HandWork, aim: HandAim): boolean {
  const theirs = ranked(b, aim);
  const differs = ranked(a, aim)
    .map((mine, at) => mine - theirs[at]!)
    .find((gap) => gap !== 0);
  return differs !== undefined && differs < 0;
}
