import type { Finding } from '../checks';
import type { RowCost } from '../fit';
import type { StyleMerit } from '../plan/event/style-facts';
import type { Contents, Paper, Spares, Tool } from '../rows';
import type { Chosen } from '../styles';
import type { LengthUnit, Ticks } from '../units';

/** What may matter most to a maker. */
export const RANKS = ['easiest', 'least-paper', 'quickest', 'sturdiest', 'fanciest'] as const;
export type Rank = (typeof RANKS)[number];

/** What goes in, for how many guests, on which paper and tool. */
export interface AnswersQuestion {
  readonly contents: Contents;
  readonly favors: number;
  readonly spares: Spares;
  /** On the shelf or not yet. */
  readonly paper: Paper;
  /** Without one: a ruler and a knife. */
  readonly tool: Tool | undefined;
  readonly unit: LengthUnit;
  readonly currency: string;
}

/** How the finished box is shut. */
export type Closing = 'lid' | 'tuck' | 'sleeve' | 'folds' | 'open';

/** A box that can be made: it holds the contents, fits the sheet, and every mark is on the tool. */
export interface Answer {
  readonly styleId: string;
  readonly sizes: Readonly<Record<string, Ticks>>;
  readonly options: Chosen;
  /** How the contents lie, by its place in `neededRooms`. */
  readonly arrangement: number;
  readonly inside: readonly [Ticks, Ticks, Ticks];
  /** Sum over its marks of their place in the row of marks; 0: whole inches or centimeters only. */
  readonly fiddliness: number;
  /** Its hardest mark, boxes a sheet, and how loose the contents lie. */
  readonly row: RowCost;
  /** Lines that are cut by template. */
  readonly byTemplate: number;
  readonly glued: number;
  readonly sheets: { readonly count: number; readonly atLeast: number; readonly proven: boolean };
  /** What the order uses up, in minor units; null where no price is known. */
  readonly costMinor: number | null;
  readonly minutes: number;
  readonly closing: Closing;
  readonly merits: readonly StyleMerit[];
  readonly warnings: readonly Finding[];
  /** One list of numbers a rank; of two answers the one whose list is smaller, first number first, ranks higher. */
  readonly keys: Readonly<Record<Rank, readonly number[]>>;
}

/** Why a style has no answer. `size`: none of its sizes gives the room on these marks; `sheet`: larger than the sheet; `hold`: what goes in does not stay in. */
export type NoAnswer = 'size' | 'sheet' | 'hold';

/** One style looked through. */
export interface StyleAnswers {
  readonly styleId: string;
  /** Its easiest box, and the one of least paper where that is another. */
  readonly answers: readonly Answer[];
  readonly none: NoAnswer | null;
  /** Styles in all. */
  readonly of: number;
}
