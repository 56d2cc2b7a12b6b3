import { type Carrier, carrierKey } from '../../net/carrier';
import type { PieceNet } from '../../net/types';
import { closingActs } from '../program/assembly-acts';
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
export type LineWork = 'outline' | 'slit' | `score ${string}`;

/** A fold is told apart to 0.1 degree, finer than a hand folds and as fine as a card prints. source: our choice. */
export const foldMark = (deg: number): string => (Math.round(deg * 10) / 10 + 0).toFixed(1);

/** How an act of gluing or closing reads in a form. */
export const spellAct = (act: Extract<BenchOp, { op: 'glue' | 'close' }>): string =>
  act.op === 'glue'
    ? `glue ${act.panel} onto ${act.onto}, ${act.lap}`
    : `${act.by} ${act.panels.map((panel, i) => `${panel} to ${foldMark(act.toDeg[i] ?? 0)}`).join(', ')}`;

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
    return [...lines.sort(), ...acts];
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
    else form.addSegment(edge, `score ${foldMark(foldOf(edge))}`);
  }
  return form.finish(closingActs(piece).map(spellAct));
}
