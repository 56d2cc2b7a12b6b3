import { samePoint } from '../../net/point';
import { type BlankSide, tabEndOf } from '../../net/tab-end';
import type { NetEdge, PieceNet, Point } from '../../net/types';
import {
  flipped,
  fourLies,
  type Lie,
  type Quarters,
  quartersOf,
  toBench,
  uprightIn,
} from '../equal/card-lie';
import type { Segment } from '../equal/line-stretches';
import { firstLie, isAtFence } from '../first-lie';
import type { BenchOp, BenchProgram, BenchTool, CardFace } from '../types';
import { closingActs } from './closing-acts';
import { riseOf } from './curve-rise';
import { placeCost } from './handling-cost';
import { makerFolds } from './maker-folds';
import { netLines } from './net-lines';
import { outlineActs } from './outline-acts';
import { orderScores, type ScoreStop } from './score-order';
import { type ScoreRun, scoreRuns, slantedScores } from './score-runs';
import { orderSlits } from './slit-order';
import { slitWork } from './slit-ways';

export interface ProgramChoices {
  /**
   * Which face lies up for the scores that fold inward; default outside, so that every fold closes over its bead. source: carton makers'
   * guidance to fold towards the bead (holmen.com, paperboard creasing).
   */
  readonly faceUp?: CardFace;
}

/**
 * The acts that make a piece from its blank with a tool: scores while every edge is whole, then slits, outline and holes, then the creasing,
 * adhesive and closing. Scores that fold outward are pressed on the other face, after one flip. Along the strip of a tube places are read
 * off the edge opposite the tab, else off whichever edge is easier; few fence settings and turns.
 */
export function deriveProgram(piece: PieceNet, tool: BenchTool, choices: ProgramChoices = {}): BenchProgram {
  const faceUp = choices.faceUp ?? 'outside';
  const rightFence = tool.fence === 'right';
  const foldOf = makerFolds(piece);
  const isOutward = (score: NetEdge): boolean => foldOf(score) < 0;
  const isScored = piece.edges.some(({ kind }) => kind === 'score');
  const faces = [
    { mirrored: (faceUp === 'outside') !== rightFence, wanted: (score: NetEdge) => !isOutward(score) },
    { mirrored: (faceUp === 'inside') !== rightFence, wanted: isOutward },
  ].filter(({ wanted }, i) => i === 0 || piece.edges.some((edge) => edge.kind === 'score' && wanted(edge)));
  const cutMirrored = isScored ? (faces.at(-1)?.mirrored ?? rightFence) : rightFence;
  const slits = orderSlits(
    slitWork(
      piece,
      netLines(piece, () => false),
      cutMirrored,
    ),
  );

  const ops: BenchOp[] = [{ op: 'blank', ...piece.blank }];
  let lie: Lie = { quarters: 0, mirrored: rightFence };
  const turnTo = (quarters: Quarters): void => {
    const by = quartersOf(quarters - lie.quarters);
    if (by !== 0) ops.push({ op: 'turn', quarters: by });
    lie = { ...lie, quarters };
  };
  const flipTo = (mirrored: boolean): void => {
    if (lie.mirrored === mirrored) return;
    ops.push({ op: 'flip' });
    lie = flipped(lie);
  };

  const tabEnd = tabEndOf(piece);
  for (const [i, { mirrored, wanted }] of (isScored ? faces : []).entries()) {
    flipTo(mirrored);
    // A blank may be laid down any way round; later turns count from how it lies.
    if (i === 0) turnTo(firstLie(tabEnd, mirrored).quarters);
    const from = lie;
    const turnsAfter = (turned: Quarters): number =>
      i === faces.length - 1 ? slits.turnsFrom(quartersOf(from.quarters + turned)) : 0;
    const lines = netLines(piece, wanted);
    const runs = scoreRuns(piece, lines);
    const options = runs.map((run, at) => scoreStops(piece, run, at, tool, { from, tabEnd }));
    const { stops } = orderScores(options, tool, turnsAfter);
    for (const stop of stops) {
      turnTo(quartersOf(from.quarters + stop.quarters));
      const run = runs[stop.run];
      if (run) ops.push(...pressRun(piece, run, lie, tool));
    }
    ops.push(...slantedScores(lines).map((line) => rulerAct('scoreLine', piece, line, lie)));
    ops.push(...curveActs(piece, lie, wanted));
  }
  for (const group of slits.from(lie.quarters)) {
    turnTo(group.quarters);
    ops.push(...group.ops.map((op) => withinReach(op, tool)));
  }
  ops.push(...slits.slanted.map((line) => rulerAct('slitLine', piece, line, lie)));
  ops.push(...outlineActs(piece, lie));
  if (isScored) {
    flipTo(rightFence);
    ops.push({ op: 'crease', over: faceUp === 'outside' ? 'bead' : 'groove' });
  }
  ops.push(...closingActs(piece));
  return { piece: piece.id, faceUp, ops, ...countHandling(ops, tool) };
}

/** The two lies in which a line stands upright, each turned from how the card lies, with its distance from the fence. */
function scoreStops(
  { blank }: PieceNet,
  { line }: ScoreRun,
  run: number,
  tool: BenchTool,
  { from, tabEnd }: { readonly from: Lie; readonly tabEnd: BlankSide | null },
): readonly ScoreStop[] {
  return fourLies(from.mirrored).flatMap((lie): ScoreStop[] => {
    const upright = uprightIn(blank, lie, line.a, line.b);
    if (!upright) return [];
    const cost = placeCost(upright.at, tool, isAtFence(tabEnd, lie));
    return [{ quarters: quartersOf(lie.quarters - from.quarters), at: upright.at, run, cost }];
  });
}

function pressRun(
  { blank }: PieceNet,
  { line, spans }: ScoreRun,
  lie: Lie,
  tool: BenchTool,
): readonly BenchOp[] {
  return spans.flatMap((span): BenchOp[] => {
    const stretch = uprightIn(blank, lie, (span ?? line).a, (span ?? line).b);
    if (!stretch) return [];
    const { at, from, to } = stretch;
    if (at > tool.reach) return [{ op: 'scoreLine', a: { x: at, y: from }, b: { x: at, y: to } }];
    return [{ op: 'score', at, span: span && { from, to } }];
  });
}

/** A slit beyond the tool's reach is cut along a ruler. */
function withinReach(op: Extract<BenchOp, { op: 'slit' }>, tool: BenchTool): BenchOp {
  const { at, from, to } = op;
  return at <= tool.reach ? op : { op: 'slitLine', a: { x: at, y: from }, b: { x: at, y: to } };
}

const rulerAct = (op: 'scoreLine' | 'slitLine', { blank }: PieceNet, line: Segment, lie: Lie): BenchOp => ({
  op,
  a: toBench(blank, lie, line.a),
  b: toBench(blank, lie, line.b),
});

/**
 * How often the fence is set for scoring (0 on a grooved board, where nothing is set) and how often the card is turned, once it lies on the
 * bench: a blank is laid down any way round.
 */
function countHandling(
  ops: readonly BenchOp[],
  tool: BenchTool,
): { readonly fenceSettings: number; readonly turns: number } {
  const settings = ops.flatMap((op) => (op.op === 'score' ? [op.at] : []));
  return {
    fenceSettings: tool.kind === 'fence' ? settings.filter((at, i) => at !== settings[i - 1]).length : 0,
    turns: ops.slice(ops.findIndex(isWork)).filter((op) => op.op === 'turn').length,
  };
}

const isWork = ({ op }: BenchOp): boolean => op !== 'blank' && op !== 'flip' && op !== 'turn';

/** The curved scores that are wanted, each a run of chords laid out by template. */
function curveActs(
  piece: PieceNet,
  lie: Lie,
  wanted: (score: NetEdge) => boolean,
): readonly Extract<BenchOp, { op: 'scoreCurve' }>[] {
  return piece.curves.flatMap((_, curve) => {
    const chords = piece.edges.filter(
      (edge) => edge.kind === 'score' && edge.curve === curve && wanted(edge),
    );
    const points = joinChords(chords).map((p) => toBench(piece.blank, lie, p));
    return points.length > 0 ? [{ op: 'scoreCurve' as const, points, rise: riseOf(points) }] : [];
  });
}

/** Chords in any order and direction as one run of points, from one free end to the other. */
function joinChords(chords: readonly { readonly a: Point; readonly b: Point }[]): readonly Point[] {
  const meets = (p: Point): number => chords.filter(({ a, b }) => samePoint(a, p) || samePoint(b, p)).length;
  const first = chords.flatMap(({ a, b }) => [a, b]).find((p) => meets(p) === 1);
  if (!first) return [];
  const points = [first];
  const left = [...chords];
  for (let end = first; left.length > 0; ) {
    const next = left.findIndex(({ a, b }) => samePoint(a, end) || samePoint(b, end));
    const [chord] = next < 0 ? [] : left.splice(next, 1);
    if (!chord) break;
    end = samePoint(chord.a, end) ? chord.b : chord.a;
    points.push(end);
  }
  return points;
}
