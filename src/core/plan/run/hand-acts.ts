import { boxPrograms } from '../../bench/box-cards';
import type { BenchOp, BenchTool } from '../../bench/types';
import { asItStands } from '../../net/lay-net';
import type { PieceNet } from '../../net/types';
import type { CutTree, SheetPlan } from '../../yield/types';
import type { EventBox } from '../event/event-boxes';
import type { ActCounts, TapeStrip } from '../event/types';

const SCORES: readonly BenchOp['op'][] = ['score', 'scoreLine', 'scoreCurve'];
const SLITS: readonly BenchOp['op'][] = ['slit', 'slitLine', 'corner', 'snip', 'cutPath', 'window'];

/**
 * Hand acts for one box of a line, cutting apart: what the bench program says, strips of tape or joints of glue, then the dressing. Every
 * scored line is folded once; everything that is stuck on is placed, what is given is put in.
 */
export function countBoxActs(
  { net, dressing, pieces }: Pick<EventBox, 'net' | 'dressing' | 'pieces'>,
  tool: BenchTool,
  strips: readonly TapeStrip[],
  fills: (supplyId: string | null) => boolean,
): ActCounts {
  const ops = boxPrograms(net, tool).flatMap(({ program }) => program.ops);
  const often = (names: readonly BenchOp['op'][]) => ops.filter(({ op }) => names.includes(op)).length;
  const counted = dressing?.counted ?? [];
  const sum = (all: readonly { readonly perBox: number }[]) =>
    all.reduce((total, { perBox }) => total + perBox, 0);
  const isTaped = strips.some(({ onto }) => onto !== null);
  return {
    score: often(SCORES),
    slit: often(SLITS),
    fold: often(SCORES),
    place: sum(pieces.map(({ piece }) => piece)) + sum(counted.filter(({ supplyId }) => !fills(supplyId))),
    glue: strips.reduce((total, each) => total + each.strips, 0) + (isTaped ? 0 : often(['glue'])),
    'close-bottom': asItStands(net).filter(hasGluedBottom).length,
    tuck: ops.filter((op) => op.op === 'close' && op.by === 'tuck').length,
    fill: sum(counted.filter(({ supplyId }) => fills(supplyId))),
    'tie-bow': sum(dressing?.ties ?? []),
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
