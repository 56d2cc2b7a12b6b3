import { boxPrograms } from '../../bench/box-cards';
import type { BenchOp, BenchPoint, BenchTool } from '../../bench/types';
import { asItStands } from '../../net/lay-net';
import type { PieceNet } from '../../net/types';
import type { CutTree, SheetPlan } from '../../yield/types';
import type { EventBox } from '../event/event-boxes';
import type { ActCounts, TapeStrip } from '../event/types';

const SCORES: readonly BenchOp['op'][] = ['score', 'scoreLine', 'scoreCurve'];

/** A slanted or curved score is marked first and drawn along a ruler or template: as long as so many at the fence. source: from memory, 15 to 20 s */
const SCORES_OFF_THE_FENCE = 4;

/** A punch cuts a round hole or a slot at one stroke; every other cut is as many strokes as it has straight runs. */
function strokesOf(act: BenchOp): number {
  if (act.op === 'slit' || act.op === 'slitLine' || act.op === 'snip') return 1;
  if (act.op === 'corner') return 2;
  if (act.op === 'cutPath') return straightRuns(act.points);
  if (act.op === 'window') return act.hole === 'window' ? straightRuns([...act.ring, act.ring[0]!]) : 1;
  return 0;
}

/** A bend under this is the next chord of a curve, which the hand cuts on without lifting. */
const SAME_STROKE_DEG = 30;

function straightRuns(points: readonly BenchPoint[]): number {
  const headings = points.slice(1).map(({ x, y }, i) => Math.atan2(y - points[i]!.y, x - points[i]!.x));
  const corners = headings.slice(1).filter((heading, i) => {
    const turn = Math.abs(heading - headings[i]!);
    return (Math.min(turn, 2 * Math.PI - turn) * 180) / Math.PI > SAME_STROKE_DEG;
  });
  return corners.length + 1;
}

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
  const offTheFence = often(['scoreLine', 'scoreCurve']);
  return {
    score: often(['score']) + SCORES_OFF_THE_FENCE * offTheFence,
    slit: ops.reduce((total, act) => total + strokesOf(act), 0),
    fold: often(SCORES),
    // ribbon through a pull takes about as long as a liner; source: from memory
    place:
      often(['thread']) +
      sum(pieces.map(({ piece }) => piece)) +
      sum(counted.filter(({ supplyId }) => !fills(supplyId))),
    glue: strips.reduce((total, each) => total + each.strips, 0) + (isTaped ? 0 : often(['glue'])),
    'close-bottom': asItStands(net).filter(hasGluedBottom).length,
    tuck: ops.filter((op) => op.op === 'close' && op.by === 'tuck').length,
    fill: sum(counted.filter(({ supplyId }) => fills(supplyId))),
    'tie-bow': sum((dressing?.ties ?? []).filter(({ wrap }) => wrap !== 'pull')),
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
