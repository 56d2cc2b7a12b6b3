import type { Blank, Point } from '../net/types';
import { type Ticks, ticks } from '../units/ticks';
import { type BenchCard, edgesOfCard, isFault, type Outcome } from './bench-card';
import { type CanonicalForm, FormGatherer, foldMark } from './canonical-form';
import { flipped, turned } from './card-lie';
import { carrierOf, insideAlong, type Segment, stretchOf } from './carrier';
import { cutAway, cutCorner, cutHole, cutSlit, cutSlitLine } from './cut-card';
import { cutStretches, mergeStretches, type Stretches, shareStretches } from './exact-intervals';
import { closePanels, foldScores, gluePanels } from './fold-card';
import { pressCurve, pressLine, pressScore } from './press-scores';
import { remarksOn } from './tool-remarks';
import type { BenchFault, BenchOp, BenchTool } from './types';

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

/** The form of what lies on the bench. Scores and slits on waste or along an edge vanish; where both are, the slit is what counts. */
export function canonicalCard(card: BenchCard): CanonicalForm {
  const form = new FormGatherer();
  const edges = edgesOfCard(card);
  for (const edge of edges) form.addSegment(edge, 'outline');
  const slits = byLine(card.slits);
  const folds = byLine(card.folds);
  const inside = (line: Line): Stretches => shareStretches(line.stretches, insideAlong(line.carrier, edges));
  for (const line of slits.values()) form.add(line.carrier, 'slit', inside(line));
  for (const line of byLine(card.scores).values()) {
    let left = cutStretches(inside(line), slits.get(line.carrier.key)?.stretches ?? []);
    for (const fold of folds.get(line.carrier.key)?.members ?? []) {
      const folded = [stretchOf(line.carrier, fold)];
      form.add(line.carrier, `score ${foldMark(fold.deg)}`, shareStretches(left, folded));
      left = cutStretches(left, folded);
    }
    form.add(line.carrier, `score ${foldMark(0)}`, left);
  }
  return form.finish(card.acts);
}

interface Line<S extends Segment = Segment> {
  readonly carrier: ReturnType<typeof carrierOf>;
  readonly members: readonly S[];
  readonly stretches: Stretches;
}

/** Segments gathered by the line they lie on. */
function byLine<S extends Segment>(segments: readonly S[]): ReadonlyMap<string, Line<S>> {
  const lines = new Map<string, Line<S>>();
  for (const segment of segments) {
    const carrier = carrierOf(segment);
    const known = lines.get(carrier.key);
    const members = [...(known?.members ?? []), segment];
    const stretches = mergeStretches([...(known?.stretches ?? []), stretchOf(carrier, segment)]);
    lines.set(carrier.key, { carrier, members, stretches });
  }
  return lines;
}
