import type { Blank } from '../../net/types';
import { isOnMark, type Ticks } from '../../units';
import type { ClosingOp } from '../program/closing-acts';
import type { BenchFault, BenchFaultCode, BenchOp, BenchTool } from '../types';
import { type BenchCard, blankRing, faceUpOf, isFault, type Outcome } from './bench-card';
import { spellAct } from './canonical-form';
import { flipped, turned } from './card-lie';
import { cutAway, cutCorner, cutHole, cutSlit, cutSlitLine } from './cut-card';
import { pressCurve, pressLine, pressScore } from './press-scores';

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
    creased: null,
    fence: tool.fence ?? 'left',
    acts: [],
  };
}

function act(card: BenchCard, op: BenchOp, tool: BenchTool): Outcome {
  switch (op.op) {
    case 'blank':
      return 'second-blank';
    case 'crease':
      return creaseScores(card, op);
    case 'stick':
    case 'glue':
    case 'close':
    case 'thread':
      return foldUp(card, op);
    default:
      return card.creased && op.op !== 'flip' && op.op !== 'turn'
        ? 'card-is-folded'
        : workFlat(card, op, tool);
  }
}

type FlatOp = Exclude<BenchOp, { op: 'blank' | 'crease' | ClosingOp }>;

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
      return cutAway(card, [op.a, op.b], op.keeps);
    case 'cutPath':
      return cutAway(card, op.points, op.keeps);
    case 'window':
      return cutHole(card, op);
  }
}

/** Crease every score. A flat card is creased once, inside up, and only if there is a score on it. */
function creaseScores(card: BenchCard, { over }: Extract<BenchOp, { op: 'crease' }>): Outcome {
  if (card.creased) return 'folded-already';
  if (faceUpOf(card) === 'outside') return 'outside-is-up';
  return card.scores.length > 0 ? { ...card, creased: over } : 'no-score-to-fold';
}

/** Put adhesive on, press panels together, or turn them: only on creased card, unless it has nothing to crease and is rolled. */
const foldUp = (card: BenchCard, act: Extract<BenchOp, { op: ClosingOp }>): Outcome =>
  card.creased || card.scores.length === 0
    ? { ...card, acts: [...card.acts, spellAct(act)] }
    : 'card-is-flat';

/** What the tool does not do by itself: places between its marks, cuts longer than its blade. The maker then works by eye or ruler. */
function remarksOn(op: BenchOp, tool: BenchTool): readonly BenchFaultCode[] {
  const remarks: BenchFaultCode[] = [];
  if (!lengthsOf(op).every((length) => isOnMark(length, tool.finestMark))) remarks.push('between-marks');
  if (op.op === 'blank' && Math.max(op.across, op.up) > tool.longestCut) remarks.push('cut-longer-than-tool');
  return remarks;
}

/** The lengths of an act that are set on the tool or read off it. */
function lengthsOf(op: BenchOp): readonly Ticks[] {
  switch (op.op) {
    case 'blank':
    case 'corner':
      return [op.across, op.up];
    case 'score':
      return op.span ? [op.at, op.span.from, op.span.to] : [op.at];
    case 'slit':
      return [op.at, op.from, op.to];
    case 'scoreLine':
    case 'slitLine':
    case 'snip':
      return [op.a.x, op.a.y, op.b.x, op.b.y];
    default:
      return [];
  }
}
