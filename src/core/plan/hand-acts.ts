import { deriveProgram } from '../bench/derive-program';
import type { BenchOp, BenchTool } from '../bench/types';
import type { BoxNet, PieceNet } from '../net/types';
import type { CutTree, SheetPlan } from '../yield/types';
import type { ActCounts, TapeStrip } from './types';

const SCORES: readonly BenchOp['op'][] = ['score', 'scoreLine', 'scoreCurve'];
const SLITS: readonly BenchOp['op'][] = ['slit', 'slitLine', 'corner', 'snip', 'cutPath', 'window'];

/** Hand acts that make one box from its blanks: what the bench program says, and the strips of tape. Every scored line is folded once. */
export function countBoxActs(net: BoxNet, tool: BenchTool, tape: readonly TapeStrip[]): ActCounts {
  const ops = net.pieces.flatMap((piece) => deriveProgram(piece, tool).ops);
  const often = (names: readonly BenchOp['op'][]) => ops.filter(({ op }) => names.includes(op)).length;
  return {
    score: often(SCORES),
    slit: often(SLITS),
    fold: often(SCORES),
    glue: tape.reduce((sum, { strips }) => sum + strips, 0),
    'close-bottom': net.pieces.filter(hasGluedBottom).length,
    tuck: ops.filter((op) => op.op === 'close' && op.by === 'tuck').length,
  };
}

const hasGluedBottom = ({ faces, joints }: PieceNet): boolean =>
  joints.some(({ tab }) => faces[tab]?.role === 'bottomFlap');

/** Strokes of the trimmer for a plan, so many sheets cut at once. */
export function countStrokes({ layouts }: SheetPlan, stack: number): number {
  return layouts.reduce((sum, { sheets, tree }) => sum + countCuts(tree) * Math.ceil(sheets / stack), 0);
}

const countCuts = (tree: CutTree): number =>
  tree.kind === 'cut' ? 1 + countCuts(tree.first) + countCuts(tree.second) : 0;

/** Acts of several kinds of work together. */
export function sumActs(...all: readonly ActCounts[]): ActCounts {
  const sum: Record<string, number> = {};
  for (const acts of all) for (const [act, times] of Object.entries(acts)) sum[act] = (sum[act] ?? 0) + times;
  return sum;
}

export const timesActs = (acts: ActCounts, boxes: number): ActCounts =>
  Object.fromEntries(Object.entries(acts).map(([act, times]) => [act, times * boxes]));
