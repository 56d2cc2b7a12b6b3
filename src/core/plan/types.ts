import type { HandAct } from '../../../shared/catalogue/hand-times';
import type { DressingPiece } from '../../../shared/workbook';
import type { Ticks } from '../units';
import type { SheetPaper, SheetPart, SheetPlan } from '../yield/types';
import type { Reason } from './reason';
import type { RollPlan } from './rolls';
import type { MakingCount } from './spares';

/** Something a maker should know about her event; `about` names the row it concerns. Reads like any other finding. */
export interface EventFinding {
  readonly code: string;
  readonly severity: 'stop' | 'warn' | 'note';
  /** Id of the line, paper, supply or part. */
  readonly where: string;
  readonly about: string;
  readonly facts: Readonly<Record<string, Ticks>>;
  readonly says: string;
  readonly remedy: string;
}

/** One line of the event: a recipe so many times, spares included. */
export interface PlannedLine extends MakingCount {
  readonly lineId: string;
  readonly recipeId: string;
  readonly name: string;
  readonly styleId: string;
  readonly paperId: string | null;
  /** Strips of tape for the box itself, joint by joint. */
  readonly tape: readonly TapeStrip[];
  /** Hand acts for one box, cutting from sheets apart. */
  readonly acts: ActCounts;
}

/** Tape on one joint of one box. */
export interface TapeStrip {
  /** The glued panel and what it is glued to; a dressing piece is glued `onto` nothing by name. */
  readonly panel: string;
  readonly onto: string | null;
  readonly length: Ticks;
  /** Strips side by side: two on a joint under load. */
  readonly strips: number;
  /** How deep the glued panel is across the strip; the tape must be narrower. */
  readonly depth: Ticks;
}

export type ActCounts = Readonly<Partial<Record<HandAct, number>>>;

/** A rectangle to cut for the event. `id` is unique within it. */
export interface EventPart extends SheetPart {
  readonly name: string;
  readonly lineId: string;
  /** `box`: a piece of the style; else the kind of the dressing piece. */
  readonly kind: 'box' | DressingPiece['kind'];
  readonly perBox: number;
}

/** Everything cut from one paper, and how. */
export interface PlannedPaper {
  readonly paperId: string;
  readonly name: string;
  readonly sheet: SheetPaper;
  readonly parts: readonly EventPart[];
  readonly plan: SheetPlan;
}

/** Tape or ribbon for the event, cut in pieces that are never joined. */
export interface PlannedRolls {
  readonly supplyId: string;
  readonly name: string;
  readonly kind: 'tape' | 'ribbon';
  readonly perBox: Ticks;
  readonly total: Ticks;
  readonly rollLength: Ticks;
  readonly rolls: RollPlan;
}

/** One line of the shopping list. All counts are in the row's own unit: sheets or rolls. */
export interface ShoppingRow {
  readonly id: string;
  readonly kind: 'paper' | 'tape' | 'ribbon';
  readonly name: string;
  readonly unit: 'sheet' | 'roll';
  readonly need: number;
  readonly onHand: number;
  /** Need less stock, never below zero. */
  readonly short: number;
  readonly packs: readonly { readonly units: number; readonly priceMinor: number; readonly count: number }[];
  /** What the packs hold; 0 when nothing is bought or nothing is known to be sold. */
  readonly bought: number;
  readonly leftOver: number;
  /** Null: no price is known for what is short. */
  readonly priceMinor: number | null;
  /** What the needed units are worth, bought or on hand; null when no price is known. */
  readonly usedMinor: number | null;
  /** The working, line by line. */
  readonly why: readonly Reason[];
}

export type CostOf = ShoppingRow['kind'];

/** An amount, split by what it is for; the shares a favor add up to the price a favor. */
export interface CostSplit {
  readonly totalMinor: number;
  readonly perFavorMinor: number;
  readonly shares: readonly { readonly of: CostOf; readonly minor: number; readonly perFavorMinor: number }[];
}

export interface EventCost {
  readonly currency: string;
  /** Favors ordered; spares are paid for by these. */
  readonly favors: number;
  /** What is paid at the shop now, whole packs. */
  readonly buying: CostSplit;
  /** What the favors themselves use up, stock on hand included. */
  readonly using: CostSplit;
  /** Rows whose price is not known and that are left out of both. */
  readonly unpriced: readonly string[];
}

/** One stage of the batch. */
export interface Stage {
  readonly act: HandAct;
  readonly label: string;
  /** How often the act is done for the whole batch, and how long once. */
  readonly times: number;
  readonly secondsEach: number;
  readonly seconds: number;
}

export interface EventHours {
  readonly stages: readonly Stage[];
  /** Hand work at a steady pace, learning, setting up, and rest, all in seconds. */
  readonly steadySeconds: number;
  readonly workSeconds: number;
  readonly setUpSeconds: number;
  readonly restSeconds: number;
  readonly totalSeconds: number;
  readonly learningPercent: number;
  readonly allowancePercent: number;
}

/** Everything an event comes to: what is cut, bought, paid and done. */
export interface EventPlan {
  readonly eventId: string;
  readonly name: string;
  readonly date: string | null;
  readonly ordered: number;
  readonly making: number;
  readonly lines: readonly PlannedLine[];
  readonly papers: readonly PlannedPaper[];
  readonly rolls: readonly PlannedRolls[];
  readonly shopping: readonly ShoppingRow[];
  readonly cost: EventCost;
  readonly hours: EventHours;
  readonly findings: readonly EventFinding[];
}
