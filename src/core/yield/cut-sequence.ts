import { type Ticks, ticks } from '../units/ticks';
import type { CutTree, CuttingTool, Layout, SheetPaper } from './types';

/** A piece of card on the bench; position in the sheet's frame, so that a drawing can light it up. */
export interface CutPiece {
  /** `1`, `2`, … in the order the pieces come about; `0` is the sheet. */
  readonly name: string;
  readonly x: Ticks;
  readonly y: Ticks;
  readonly across: Ticks;
  readonly up: Ticks;
  /** `piece` is cut further. */
  readonly is: 'piece' | 'part' | 'offcut';
  readonly part: string | null;
}

/** One setting of the fence and one stroke: `piece` becomes `keep` (against the fence) and `other`. */
export interface CutStep {
  readonly piece: CutPiece;
  /** A quarter turn before the cut, since the piece last met the blade the other way. */
  readonly turn: boolean;
  readonly way: 'upright' | 'level';
  /** From fence to blade. */
  readonly fence: Ticks;
  readonly keep: CutPiece;
  readonly other: CutPiece;
  readonly why: 'square' | 'trim' | 'part';
}

export interface CutSequence {
  readonly steps: readonly CutStep[];
  /** Sheets cut at once, and how often the steps are gone through. */
  readonly stack: number;
  readonly rounds: number;
  /** Strokes of the blade over all sheets, different fence settings, quarter turns of one round. */
  readonly strokes: number;
  readonly fences: readonly Ticks[];
  readonly turns: number;
}

interface Open {
  readonly node: CutTree;
  readonly piece: CutPiece;
  readonly cutBy: 'upright' | 'level' | null;
}

/** The cuts of one layout in the order a practiced hand makes them: all cuts one way, then turn. Fence settings from the kept edge. */
export function sequenceCuts(layout: Layout, paper: SheetPaper, tool: CuttingTool): CutSequence {
  const steps: CutStep[] = [];
  let named = 0;
  const name = (): string => String(++named);
  const bench = squareSheet(layout.tree, paper, tool, steps, name);
  const open: Open[] = [bench];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const later: Open[] = [];
    cutOneWay(next, steps, later, tool, name);
    open.push(...later.reverse());
  }
  const rounds = Math.ceil(layout.sheets / Math.max(1, tool.stack));
  return {
    steps,
    stack: Math.min(Math.max(1, tool.stack), layout.sheets),
    rounds,
    strokes: steps.length * rounds,
    fences: [...new Set(steps.map(({ fence }) => fence))].sort((a, b) => b - a),
    turns: steps.filter(({ turn }) => turn).length,
  };
}

/** Makes every cut of one direction that a piece needs, and puts what must be turned aside. */
function cutOneWay(
  start: Open,
  steps: CutStep[],
  later: Open[],
  tool: CuttingTool,
  name: () => string,
): void {
  const queue: Open[] = [start];
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    const { node, piece, cutBy } = at;
    if (node.kind !== 'cut') continue;
    const [first, second] = split(piece, node.way, node.at, tool.kerf, [node.first, node.second], name);
    const keepsFirst = first.is !== 'offcut';
    const [keep, other] = keepsFirst ? [first, second] : [second, first];
    const fence = node.way === 'upright' ? keep.across : keep.up;
    const why = second.is === 'offcut' || first.is === 'offcut' ? 'trim' : 'part';
    steps.push({ piece, turn: cutBy !== null && cutBy !== node.way, way: node.way, fence, keep, other, why });
    const next = [
      { node: node.first, piece: first, cutBy: node.way },
      { node: node.second, piece: second, cutBy: node.way },
    ];
    queue.push(...next.filter((open) => open.node.kind === 'cut' && open.node.way === node.way).reverse());
    later.push(...next.filter((open) => open.node.kind === 'cut' && open.node.way !== node.way));
  }
}

type Box = Pick<CutPiece, 'x' | 'y' | 'across' | 'up'>;

function split(
  piece: Box,
  way: 'upright' | 'level',
  at: number,
  kerf: number,
  nodes: readonly [CutTree, CutTree],
  name: () => string,
): [CutPiece, CutPiece] {
  // biome-ignore format: one line
  const on = at + kerf;
  const boxes: [Box, Box] =
    way === 'upright'
      ? [
          { ...box(piece), across: ticks(at - piece.x) },
          { ...box(piece), x: ticks(on), across: ticks(Math.max(0, piece.x + piece.across - on)) },
        ]
      : [
          { ...box(piece), up: ticks(at - piece.y) },
          { ...box(piece), y: ticks(on), up: ticks(Math.max(0, piece.y + piece.up - on)) },
        ];
  return [namePiece(boxes[0], nodes[0], name()), namePiece(boxes[1], nodes[1], name())];
}

const box = ({ x, y, across, up }: Box): Box => ({ x, y, across, up });

const namePiece = (box: Box, node: CutTree, name: string): CutPiece => ({
  ...box,
  name,
  is: node.kind === 'cut' ? 'piece' : node.kind,
  part: node.kind === 'part' ? node.part : null,
});

/** Takes the squaring allowance off; the order that the tool's reach allows. */
function squareSheet(
  tree: CutTree,
  paper: SheetPaper,
  tool: CuttingTool,
  steps: CutStep[],
  name: () => string,
): Open {
  const { left, right, near, far } = paper.squaring;
  const whole: Box = { x: ticks(0), y: ticks(0), across: paper.across, up: paper.up };
  let piece = namePiece(whole, tree, '0');
  let cutBy: 'upright' | 'level' | null = null;
  const uprightFits = left + right === 0 || paper.up <= (tool.longestCut ?? paper.up);
  const ways = uprightFits ? (['upright', 'level'] as const) : (['level', 'upright'] as const);
  for (const way of ways)
    for (const side of ['near', 'far'] as const) {
      const margin = way === 'upright' ? (side === 'near' ? left : right) : side === 'near' ? near : far;
      if (margin === 0) continue;
      const rest = trimEdge(piece, way, side, margin);
      const keep = namePiece(rest.keep, tree, name());
      const other: CutPiece = { ...rest.other, name: name(), is: 'offcut', part: null };
      const fence = way === 'upright' ? keep.across : keep.up;
      steps.push({ piece: { ...piece, is: 'piece', part: null }, turn: cutBy !== null && cutBy !== way, way, fence, keep, other, why: 'square' }); // biome-ignore format: one line
      piece = keep;
      cutBy = way;
    }
  return { node: tree, piece, cutBy };
}

function trimEdge(
  piece: Box,
  way: 'upright' | 'level',
  side: 'near' | 'far',
  margin: number,
): { keep: Box; other: Box } {
  const whole = box(piece);
  const [at, size] = way === 'upright' ? (['x', 'across'] as const) : (['y', 'up'] as const);
  const kept = ticks(whole[size] - margin);
  const start = whole[at];
  return side === 'near'
    ? {
        keep: { ...whole, [at]: ticks(start + margin), [size]: kept },
        other: { ...whole, [size]: ticks(margin) },
      }
    : {
        keep: { ...whole, [size]: kept },
        other: { ...whole, [at]: ticks(start + kept), [size]: ticks(margin) },
      };
}
