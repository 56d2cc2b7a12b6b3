import type { Ticks } from '../units/ticks';

/** A place on the card in its frame of the moment: x from the fence (left), y from the near edge. */
export interface BenchPoint {
  readonly x: Ticks;
  readonly y: Ticks;
}

/** What a hole looks like: how it is called on the card. */
export type HoleKind = 'window' | 'rounded window' | 'arch' | 'round' | 'oval' | 'heart' | 'slot';

/**
 * What hands do, one act each. Distances are read from the fence, which is the card's left edge in its present orientation;
 * "near" is the edge towards the maker. Quarter turns are counter-clockwise.
 */
export type BenchOp =
  | { readonly op: 'blank'; readonly across: Ticks; readonly up: Ticks }
  | { readonly op: 'turn'; readonly quarters: 1 | 2 | 3 }
  | { readonly op: 'flip' }
  /** A straight score at `at` from the fence; the whole width, or only from `from` to `to` off the near edge. */
  | {
      readonly op: 'score';
      readonly at: Ticks;
      readonly span: null | { readonly from: Ticks; readonly to: Ticks };
    }
  /** A straight score between two points (slanted), by ruler. */
  | { readonly op: 'scoreLine'; readonly a: BenchPoint; readonly b: BenchPoint }
  /** A curved score, by template: chords through these points. */
  | { readonly op: 'scoreCurve'; readonly points: readonly BenchPoint[]; readonly rise: Ticks }
  /** Cut through at `at` from the fence, from `from` (the near edge if 0) up to `to`; card stays on both sides. */
  | { readonly op: 'slit'; readonly at: Ticks; readonly from: Ticks; readonly to: Ticks }
  | { readonly op: 'slitLine'; readonly a: BenchPoint; readonly b: BenchPoint }
  /** Cut a rectangle out of one corner, as it lies. */
  | {
      readonly op: 'corner';
      readonly corner: 'near-left' | 'near-right' | 'far-left' | 'far-right';
      readonly across: Ticks;
      readonly up: Ticks;
    }
  /**
   * One straight cut from edge to edge of the card. It keeps the larger part of the uncut card, or of what is left of it where the cut
   * starts within; the smaller one only where it says so.
   */
  | { readonly op: 'snip'; readonly a: BenchPoint; readonly b: BenchPoint; readonly keeps?: 'smaller' }
  /** A broken or curved cut from edge to edge; the same part is kept. */
  | {
      readonly op: 'cutPath';
      readonly points: readonly BenchPoint[];
      readonly curved: boolean;
      readonly keeps?: 'smaller';
    }
  /** A hole cut out whole. */
  | {
      readonly op: 'window';
      readonly ring: readonly BenchPoint[];
      readonly hole: HoleKind;
    }
  /**
   * Fold every score right over, rub it down and open it flat again: over its bead, away from the face it was pressed on; or over its
   * groove, towards that face.
   */
  | { readonly op: 'crease'; readonly over: 'bead' | 'groove' }
  /** Put adhesive on one face of a panel: `strips` of tape of this length, or liquid glue. */
  | {
      readonly op: 'stick';
      readonly panel: string;
      readonly face: CardFace;
      readonly tape: { readonly strips: number; readonly length: Ticks } | 'glue';
    }
  /** Press a panel that has its adhesive onto another. */
  | {
      readonly op: 'glue';
      readonly panel: string;
      readonly onto: string;
      readonly lap: CardFace;
      readonly tip: string | null;
    }
  /** Turn panels of the creased card. */
  | {
      readonly op: 'close';
      readonly panels: readonly string[];
      readonly by: 'fold' | 'tuck';
      readonly way: CloseWay;
      readonly tip: string | null;
    }
  /** Put ribbon of this length through the openings of a panel. */
  | { readonly op: 'thread'; readonly panel: string; readonly length: Ticks; readonly tip: string };

/** The good side of the card is its outside. */
export type CardFace = 'inside' | 'outside';

/**
 * Where panels go: flat over onto the inside, flat back onto the outside, up from a base, in, out, open again from flat to square, or
 * several ways at once; or rolled up, where nothing is scored.
 */
export type CloseWay = 'flat' | 'back' | 'up' | 'in' | 'out' | 'open' | 'together' | 'round';

/** What the maker's tool can do. */
export interface BenchTool {
  readonly name: string;
  /** Finest mark, as a length: 1/16 in is 508 ticks, 1 mm 320. */
  readonly finestMark: Ticks;
  readonly unit: 'in' | 'mm';
  /** How far from the fence it can score. */
  readonly reach: Ticks;
  /** Longest cut it makes. */
  readonly longestCut: Ticks;
  /** A trimmer sets a fence for each mark; a grooved board has every mark at once. */
  readonly kind: 'fence' | 'grooves';
  /** On which side the card is measured from; a left-handed maker's stands on the right. Default left. */
  readonly fence?: 'left' | 'right';
}

export interface BenchProgram {
  readonly piece: string;
  /** Which face lies up at the bench. */
  readonly faceUp: CardFace;
  readonly ops: readonly BenchOp[];
  /** How often the fence is set for scoring (0 on a grooved board), and how often the card is turned. */
  readonly fenceSettings: number;
  readonly turns: number;
}

/** Why a real bench could not do an act; `op` is its place in the program. */
export interface BenchFault {
  readonly code: BenchFaultCode;
  readonly op: number;
}

export type BenchFaultCode =
  /** The first act must be to cut the blank, and no later one. */
  | 'no-blank'
  | 'second-blank'
  /** Scoring and slitting need the whole edge against the fence, and measuring up needs the near edge. */
  | 'fence-edge-gone'
  | 'near-edge-gone'
  | 'off-card'
  | 'beyond-reach'
  | 'empty-span'
  | 'slit-severs-card'
  | 'rise-is-not-the-curve'
  /** A cut starts and ends on an edge of the card, and meets none in between. */
  | 'cut-not-from-edge'
  | 'cut-crosses-edge'
  | 'hole-not-inside'
  /** Creasing needs a score, and is done once. */
  | 'no-score-to-fold'
  /** Card is folded with its inside up, where hands see what they close. */
  | 'outside-is-up'
  | 'folded-already'
  /** No scoring or cutting on folded card, and no closing before it. */
  | 'card-is-folded'
  | 'card-is-flat'
  /** Remarks: the work goes on. */
  | 'between-marks'
  | 'cut-longer-than-tool';
