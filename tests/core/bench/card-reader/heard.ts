import type { Lie } from '../../../../src/core/bench/equal/card-lie';
import type { BenchOp, BenchPoint, CardFace } from '../../../../src/core/bench/types';
import type { BlankSide } from '../../../../src/core/net/tab-end';
import type { Blank } from '../../../../src/core/net/types';
import type { LengthUnit } from '../../../../src/core/units';

/** What a reader of the card knows besides its words. */
export interface CardKey {
  readonly unit: LengthUnit;
  readonly fence: 'left' | 'right';
  /** Where the tab ends in the net, which says how the piece lies in its drawing. */
  readonly tabEnd: BlankSide | null;
  /** What each panel is called on the card, as `panelLabels` gives it. */
  readonly labels: ReadonlyMap<string, string>;
}

/** What was read before a sentence and gives it its meaning. */
export interface HeardSoFar {
  readonly key: CardKey;
  readonly blank: Blank | null;
  readonly lie: Lie;
  readonly templates: ReadonlyMap<string, readonly BenchPoint[]>;
  /** By how many quarters it was turned last. */
  readonly turned: 1 | 2 | 3 | null;
  /** What the step before said. */
  readonly before: readonly BenchOp[];
  /** The panels named last, which `it` and `them` mean. */
  readonly it: readonly string[];
  /** The panels that got adhesive in this step, and on which face. */
  readonly stuck: ReadonlyMap<string, CardFace>;
}

export type Reader = (words: readonly string[], heard: HeardSoFar) => readonly BenchOp[] | null;
