import type { PieceNet } from '../../net/types';
import { fourLies, type Lie, type Quarters, quartersOf, toBench, uprightIn } from '../equal/card-lie';
import type { Segment } from '../equal/line-stretches';
import type { BenchOp, BenchProgram, BenchTool } from '../types';
import { closingActs, foldActs } from './assembly-acts';
import { countHandling } from './count-handling';
import { curveActs } from './curve-acts';
import { placeCost } from './handling-cost';
import { netLines } from './net-lines';
import { outlineActs } from './outline-acts';
import { orderScores, type ScoreStop } from './score-order';
import { type ScoreRun, scoreRuns, slantedScores } from './score-runs';
import { orderSlits } from './slit-order';
import { slitWork } from './slit-ways';

export interface ProgramChoices {
  /** Which face lies up while scoring and cutting; default inside, as the net is drawn. */
  readonly faceUp?: 'inside' | 'outside';
}

/**
 * The acts that make a piece from its blank with a tool: scores while every edge is whole, then slits, outline and holes, then folds, glue
 * and closing. Places are read off whichever edge is easier; few fence settings and turns.
 */
export function deriveProgram(piece: PieceNet, tool: BenchTool, choices: ProgramChoices = {}): BenchProgram {
  const faceUp = choices.faceUp ?? 'inside';
  const mirrored = (faceUp === 'outside') !== (tool.fence === 'right');
  const lines = netLines(piece);
  const runs = scoreRuns(piece, lines);
  const slits = orderSlits(slitWork(piece, lines, mirrored));
  const { stops } = orderScores(
    runs.map((run, i) => scoreStops(piece, run, i, tool, mirrored)),
    tool,
    slits.turnsFrom,
  );

  const ops: BenchOp[] = [{ op: 'blank', ...piece.blank }];
  if (faceUp === 'outside') ops.push({ op: 'flip' });
  let lie: Lie = { quarters: 0, mirrored };
  const turnTo = (quarters: Quarters): void => {
    const by = quartersOf(quarters - lie.quarters);
    if (by !== 0) ops.push({ op: 'turn', quarters: by });
    lie = { quarters, mirrored };
  };

  for (const stop of stops) {
    turnTo(stop.quarters);
    const run = runs[stop.run];
    if (run) ops.push(...pressRun(piece, run, lie, tool));
  }
  ops.push(...slantedScores(lines).map((line) => rulerAct('scoreLine', piece, line, lie)));
  ops.push(...curveActs(piece, lie));
  for (const group of slits.from(lie.quarters)) {
    turnTo(group.quarters);
    ops.push(...group.ops.map((op) => withinReach(op, tool)));
  }
  ops.push(...slits.slanted.map((line) => rulerAct('slitLine', piece, line, lie)));
  ops.push(...outlineActs(piece, lie), ...foldActs(piece), ...closingActs(piece));
  return { piece: piece.id, faceUp, ops, ...countHandling(ops, tool) };
}

/** The two lies in which a line stands upright, each with its distance from the fence. */
function scoreStops(
  { blank }: PieceNet,
  { line }: ScoreRun,
  run: number,
  tool: BenchTool,
  mirrored: boolean,
): readonly ScoreStop[] {
  return fourLies(mirrored).flatMap((lie): ScoreStop[] => {
    const upright = uprightIn(blank, lie, line.a, line.b);
    if (!upright) return [];
    return [{ quarters: lie.quarters, at: upright.at, run, cost: placeCost(upright.at, tool) }];
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
