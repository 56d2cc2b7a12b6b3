import type { Ticks } from '../units/ticks';

/** A paper as it is bought: the true, measured sheet. */
export interface SheetPaper {
  readonly id: string;
  readonly across: Ticks;
  readonly up: Ticks;
  /** Which side of the sheet the grain runs along; `none` where it does not matter. */
  readonly grain: 'across' | 'up' | 'none';
  /** Its print stands one way, up the sheet: `grain` is then the way of the print, and no part may lie on its head. */
  readonly oneWay?: true;
  /** Taken off each edge to square the sheet before anything else. */
  readonly squaring: {
    readonly left: Ticks;
    readonly right: Ticks;
    readonly near: Ticks;
    readonly far: Ticks;
  };
  /** Whole sheets on hand; null: as many as are asked for. */
  readonly onHand: number;
}

/** A rectangle of card wanted `count` times. */
export interface SheetPart {
  readonly id: string;
  readonly across: Ticks;
  readonly up: Ticks;
  readonly count: number;
  /** Which way the grain must run in the part; `free` lets it be turned. */
  readonly grain: 'across' | 'up' | 'free';
}

export interface CuttingTool {
  /** Longest cut the tool makes; null: any. */
  readonly longestCut: Ticks | null;
  /** Card lost to each cut: 0 for a blade. */
  readonly kerf: Ticks;
  /** Sheets cut at once. */
  readonly stack: number;
  /** Turns allowed: `free`, or at most this many stages. */
  readonly stages: 'free' | 2 | 3;
}

export interface PlacedPart {
  readonly part: string;
  readonly x: Ticks;
  readonly y: Ticks;
  readonly across: Ticks;
  readonly up: Ticks;
  readonly turned: boolean;
}

export interface Offcut {
  readonly x: Ticks;
  readonly y: Ticks;
  readonly across: Ticks;
  readonly up: Ticks;
}

/**
 * A guillotine cut of one rectangle into two, or a leaf: a part, or an offcut. The tree starts from the squared sheet; `at` is where the
 * fence stands, in the sheet's own frame (x across, y up): `first` ends there, `second` begins one kerf further.
 */
export type CutTree =
  | {
      readonly kind: 'cut';
      readonly way: 'upright' | 'level';
      readonly at: Ticks;
      readonly first: CutTree;
      readonly second: CutTree;
    }
  | { readonly kind: 'part'; readonly part: string; readonly turned: boolean }
  | { readonly kind: 'offcut' };

/** One way of cutting one sheet, and how many sheets are cut so. */
export interface Layout {
  readonly sheets: number;
  readonly parts: readonly PlacedPart[];
  readonly offcuts: readonly Offcut[];
  readonly tree: CutTree;
}

/**
 * Why no plan uses fewer sheets, in sums that anyone can check: give every part its points; no sheet holds more than `most`; all parts
 * together are worth more than `most` times one sheet less than `sheets`.
 */
export interface BoundProof {
  readonly points: Readonly<Record<string, number>>;
  readonly most: number;
  /** What the proof shows: at least this many sheets. */
  readonly sheets: number;
  /** Where the points alone do not show it: one sheet less would have to be made of few layouts, and every choice of them is looked at. */
  readonly cases?: CaseProof;
}

/**
 * By the points, a plan on one sheet less can use only layouts of at least `least` points. A choice splits on how often one of them (its
 * content by part) is used; each case ends with points of its own that what is left in it is too much for the sheets left.
 */
export type CaseTree =
  | { readonly points: Readonly<Record<string, number>>; readonly rows?: readonly RoundedRow[] }
  | {
      readonly layout: Readonly<Record<string, number>>;
      readonly atMost: number;
      readonly less: CaseTree;
      readonly more: CaseTree;
    };

/**
 * Points for a weight that is rounded up: part for part `times / over`, added up over one sheet and rounded up. Over a whole plan these add up
 * to at least what all that is left weighs, rounded up.
 */
export interface RoundedRow {
  readonly times: Readonly<Record<string, number>>;
  readonly over: number;
  readonly points: number;
}

export interface CaseProof {
  readonly least: number;
  /** How many layouts hold as much, none of which is part of another. */
  readonly layouts: number;
  readonly tree: CaseTree;
}

/** Always an answer, always a bound: `proven` means no plan uses fewer sheets of this paper. */
export interface SheetPlan {
  readonly paper: string;
  readonly sheets: number;
  readonly lowerBound: number;
  readonly proven: boolean;
  readonly layouts: readonly Layout[];
  /** Null: the bound is trivial (no parts). */
  readonly proof: BoundProof | null;
  /** Parts that fit no sheet of this paper at all; the plan leaves them out and the page says so. */
  readonly unplaced: readonly string[];
}
