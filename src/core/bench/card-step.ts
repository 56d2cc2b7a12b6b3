import type { PrintedLength, Ticks } from '../units';
import type { Lie } from './equal/card-lie';

export type StepKind = 'blank' | 'score' | 'slit' | 'cut' | 'fold' | 'glue' | 'close';

/** Where hands can be hurt; `CAUTIONS` has the words. */
export type CautionCode = 'blade' | 'hot-glue';

/** A number to find on the tool, printed big. */
export interface CardMark {
  readonly at: Ticks;
  /** Which way it is measured. */
  readonly reads: 'across' | 'up' | 'from the fence' | 'off the near edge';
  readonly printed: PrintedLength;
}

/** One step of the maker's card. */
export interface CardStep {
  /** Stays the same while the program does: `score-2` is the second scoring step. */
  readonly id: string;
  readonly kind: StepKind;
  /** A sentence an act or run of like acts; regular, so that it reads back into the program. */
  readonly headline: string;
  /** The same without its turns, and in full where the headline says `the same`: for a batch, where each step is done by itself. */
  readonly alone: string;
  readonly marks: readonly CardMark[];
  /** Rows below the headline, as regular: one act each. */
  readonly details: readonly string[];
  /** Every point of the curves laid out in this step, for a maker without the printed template. */
  readonly template: readonly string[];
  /** What a practiced maker adds where the numbers call for it; not part of the program. */
  readonly tips: readonly string[];
  readonly cautions: readonly CautionCode[];
  /** The acts it covers: indices into the program's `ops`, `to` not included. */
  readonly ops: { readonly from: number; readonly to: number };
  /** How the card lies while the step is done, after any turn in it. */
  readonly lie: Lie;
}
