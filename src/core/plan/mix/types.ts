import type { CuttingTool, SheetPaper, SheetPart, SheetPlan } from '../../yield/types';
import type { Pack, Purchase } from '../buying/packs';

/** Boxes that may come from any of these cards: all parts of one box from the same card, box for box as it is cheapest. */
export interface MixLot {
  readonly id: string;
  readonly boxes: number;
  /** What one box is cut from; `count` is for one box. Ids are unique in the whole order. */
  readonly parts: readonly SheetPart[];
  readonly cards: readonly string[];
}

/** A size of sheet that a card comes in: whole sheets, or offcuts of it, which nobody sells. `sheet.onHand` of them lie on hand. */
export interface MixFormat {
  readonly card: string;
  readonly sheet: SheetPaper;
  readonly packs: readonly Pack[];
}

export interface MixOrder {
  readonly lots: readonly MixLot[];
  readonly formats: readonly MixFormat[];
  readonly tool: CuttingTool;
}

/** Points for every part on every card, in whole numbers, and the most that one sheet of each format holds. */
export interface MixRow {
  readonly points: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly most: Readonly<Record<string, number>>;
}

/**
 * Why no mix costs less: whatever is bought, all boxes together are worth no more points than the sheets can hold, row by row; and no cheaper
 * purchase holds as many in every row. Where only so many cards may be used, each choice of them has rows of its own.
 */
export interface MixProof {
  readonly boundMinor: number;
  readonly choices: readonly { readonly cards: readonly string[] | null; readonly rows: readonly MixRow[] }[];
}

/** What is cut from one format, and what is bought of it. */
export interface MixCut {
  readonly format: string;
  readonly onHand: number;
  readonly parts: readonly SheetPart[];
  readonly plan: SheetPlan;
  readonly purchase: Purchase;
}

export interface MixPlan {
  /** How many boxes of each lot come from each card. */
  readonly shares: readonly { readonly lot: string; readonly card: string; readonly boxes: number }[];
  readonly cuts: readonly MixCut[];
  /** For what must be bought, before discount, shipping and tax. */
  readonly priceMinor: number;
  /** Any mix costs at least this; `proven` where it is the price. */
  readonly boundMinor: number;
  readonly proven: boolean;
  readonly proof: MixProof;
}
