import type { Blank, Point } from '../../net/types';
import { type Ticks, ticks } from '../../units/ticks';
import type { BenchFault, BenchOp, BenchTool } from '../types';
import { type BenchCard, isFault, type Outcome } from './bench-card';
import { flipped, turned } from './card-lie';
import { cutAway, cutCorner, cutHole, cutSlit, cutSlitLine } from './cut-card';
import { closePanels, foldScores, gluePanels } from './fold-card';
import { pressCurve, pressLine, pressScore } from './press-scores';
import { remarksOn } from './tool-remarks';

/** What came of a program: the card it makes and the tool's remarks, or the first act that cannot be done. */
export type BenchRun =
  | { readonly ok: true; readonly card: BenchCard; readonly remarks: readonly BenchFault[] }
  | { readonly ok: false; readonly fault: BenchFault };

/** Does the acts one by one on a blank rectangle, as a maker would, with the guards a real bench has. */
export function runProgram(ops: readonly BenchOp[], tool: BenchTool): BenchRun {
  const remarks: BenchFault[] = [];
  let card: BenchCard | null = null;
  for (const [i, op] of ops.entries()) {
    const outcome: Outcome = card ? act(card, op, tool) : begin(op, tool);
    if (isFault(outcome)) return { ok: false, fault: { code: outcome, op: i } };
    card = outcome;
    remarks.push(...remarksOn(op, tool).map((code) => ({ code, op: i })));
  }
  return card ? { ok: true, card, remarks } : { ok: false, fault: { code: 'no-blank', op: 0 } };
}

function begin(op: BenchOp, tool: BenchTool): Outcome {
  if (op.op !== 'blank') return 'no-blank';
  if (op.across <= 0 || op.up <= 0) return 'off-card';
  const blank: Blank = { across: op.across, up: op.up };
  return {
    blank,
    lie: { quarters: 0, mirrored: tool.fence === 'right' },
    ring: blankRing(blank),
    holes: [],
    scores: [],
    slits: [],
    folds: [],
    acts: [],
  };
}

const blankRing = ({ across, up }: Blank): readonly Point[] => {
  const at = (x: Ticks, y: Ticks): Point => ({ x, y });
  return [at(ticks(0), ticks(0)), at(across, ticks(0)), at(across, up), at(ticks(0), up)];
};

function act(card: BenchCard, op: BenchOp, tool: BenchTool): Outcome {
  switch (op.op) {
    case 'blank':
      return 'second-blank';
    case 'fold':
      return card.acts.length > 0 ? 'card-is-folded' : foldScores(card, op);
    case 'glue':
      return gluePanels(card, op);
    case 'close':
      return closePanels(card, op);
    default:
      return card.folds.length > 0 ? 'card-is-folded' : workFlat(card, op, tool);
  }
}

type FlatOp = Exclude<BenchOp, { op: 'blank' | 'fold' | 'glue' | 'close' }>;

function workFlat(card: BenchCard, op: FlatOp, tool: BenchTool): Outcome {
  switch (op.op) {
    case 'turn':
      return { ...card, lie: turned(card.lie, op.quarters) };
    case 'flip':
      return { ...card, lie: flipped(card.lie) };
    case 'score':
      return pressScore(card, op, tool);
    case 'scoreLine':
      return pressLine(card, op);
    case 'scoreCurve':
      return pressCurve(card, op);
    case 'slit':
      return cutSlit(card, op, tool);
    case 'slitLine':
      return cutSlitLine(card, op);
    case 'corner':
      return cutCorner(card, op);
    case 'snip':
      return cutAway(card, [op.a, op.b]);
    case 'cutPath':
      return cutAway(card, op.points);
    case 'window':
      return cutHole(card, op);
  }
}
