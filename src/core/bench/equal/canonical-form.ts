import { type Carrier, carrierKey } from '../../net/carrier';
import type { PieceNet } from '../../net/types';
import { type ClosingOp, closingActs } from '../program/closing-acts';
import { makerFolds } from '../program/maker-folds';
import type { BenchOp } from '../types';
import { mergeStretches, type Stretch, type Stretches, spellStretch } from './exact-intervals';
import { lineOf, type Segment, stretchOf } from './line-stretches';

/**
 * What a piece of card is, whatever the order it was made in: for each whole line and each thing done along it the merged stretches, as
 * exact fractions; then what is glued and closed, in order. Two pieces are the same when their forms are: no tolerance anywhere.
 */
export type CanonicalForm = readonly string[];

/** Done along a line. The card's own edge and a cut outline are both `outline`. */
export type LineWork = 'outline' | 'slit' | 'score in' | 'score out' | 'score both';

/** How an act of sticking, gluing or closing reads in a form. Opening a flat tube turns all of it, so no panel is named. */
export function spellAct(act: Extract<BenchOp, { op: ClosingOp }>): string {
  switch (act.op) {
    case 'stick':
      return `stick ${act.panel}, ${act.face}: ${spellTape(act.tape)}`;
    case 'glue':
      return `glue ${act.panel} onto ${act.onto}, ${act.lap}`;
    case 'thread':
      return `thread ${act.length} through ${act.panel}`;
    case 'close':
      return `${act.by}${act.by === 'fold' ? ` ${act.way}` : ''}${act.way === 'open' ? '' : `: ${[...act.panels].sort().join(', ')}`}`;
  }
}

const spellTape = (tape: Extract<BenchOp, { op: 'stick' }>['tape']): string =>
  tape === 'glue' ? tape : `${tape.strips} of ${tape.length}`;

/** Joints stuck or pressed in one go have no order among them. */
function inOneGo(acts: readonly string[]): readonly string[] {
  const verb = (act: string): string => act.slice(0, act.indexOf(' '));
  const runs: string[][] = [];
  for (const act of acts) {
    const last = runs.at(-1);
    if (last?.[0] !== undefined && verb(last[0]) === verb(act) && /^(stick|glue) /.test(act)) last.push(act);
    else runs.push([act]);
  }
  return runs.flatMap((run) => run.sort());
}

/** Gathers line work piece by piece. */
export class FormGatherer {
  readonly #lines = new Map<string, Stretch[]>();

  add(line: Carrier, work: LineWork, stretches: Stretches): void {
    if (stretches.length === 0) return;
    const key = `${carrierKey(line)} ${work}`;
    const known = this.#lines.get(key);
    if (known) known.push(...stretches);
    else this.#lines.set(key, [...stretches]);
  }

  addSegment(segment: Segment, work: LineWork): void {
    const line = lineOf(segment);
    this.add(line, work, [stretchOf(line, segment)]);
  }

  finish(acts: readonly string[]): CanonicalForm {
    const lines = [...this.#lines].map(
      ([key, stretches]) => `${key}: ${mergeStretches(stretches).map(spellStretch).join(' ')}`,
    );
    return [...lines.sort(), ...inOneGo(acts)];
  }
}

/** The form of a designed net. */
export function canonicalNet(piece: PieceNet): CanonicalForm {
  const form = new FormGatherer();
  const foldOf = makerFolds(piece);
  for (const edge of piece.edges) {
    if (edge.kind === 'join') continue;
    if (edge.kind === 'edge' || edge.kind === 'cut') form.addSegment(edge, 'outline');
    else if (edge.kind === 'slit') form.addSegment(edge, 'slit');
    else form.addSegment(edge, foldOf(edge) < 0 ? 'score out' : 'score in');
  }
  return form.finish(closingActs(piece).map(spellAct));
}
