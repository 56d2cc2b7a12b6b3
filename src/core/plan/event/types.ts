import type { DressingPiece, GlueSupply, PieceSupply, RollSupply } from '../../rows';
import type { Caution } from '../../rows/cautions';
import type { HandAct } from '../../rows/hand-times';
import type { Ticks } from '../../units';
import type { Reason } from '../../units/reason';
import type { SheetPaper, SheetPart, SheetPlan } from '../../yield/types';
import type { EventCost } from '../buying/cost';
import type { RollPlan } from '../buying/rolls';
import type { OrderWays } from '../buying/shop-order';
import type { ShoppingRow } from '../buying/shopping';
import type { CarryPlan } from '../carry/plan-carry';
import type { LessonPlan } from '../class/lesson';
import type { EventHours } from '../run/hours';
import type { Timetable } from '../run/timetable';
import type { AskingPrice } from './asking';
import type { KitList } from './kit-list';
import type { MakingCount } from './spares';

/** Something a maker should know about their event; `about` names the row it concerns. Reads like any other finding. */
export interface EventFinding extends Reason {
  readonly code: string;
  readonly severity: 'stop' | 'warn' | 'note';
  /** Id of the line, paper, supply or part. */
  readonly where: string;
  readonly about: string;
  readonly remedy: string;
}

export type ActCounts = Readonly<Partial<Record<HandAct, number>>>;

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

/** One line of the event: a recipe so many times, spares included. */
export interface PlannedLine extends MakingCount {
  /** Of the spares, those made because more were spoiled at the bench than the rule allowed for. */
  readonly again: number;
  /** Of 100 such boxes, those that close at the accuracy the spares go by; null: they go by none, or the style has no fit that marks could spoil. */
  readonly closes: number | null;
  readonly lineId: string;
  readonly recipeId: string;
  readonly name: string;
  readonly styleId: string;
  readonly paperId: string | null;
  readonly dressingId: string | null;
  /** Strips of tape for one box, joint by joint, then the dressing. */
  readonly tape: readonly TapeStrip[];
  /** Hand acts for one box, cutting from sheets apart. */
  readonly acts: ActCounts;
}

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
  /** What the plan was asked for: parts alike counted together, under the id of the first. The layouts name these. */
  readonly demand: readonly SheetPart[];
  readonly plan: SheetPlan;
  /** Sheets spoiled while cutting, beside those of the plan. */
  readonly spoiled: number;
  /** The same sheets with fewest strokes, where the event puts something else first. */
  readonly fewestStrokes?: SheetPlan;
}

/** Tape, ribbon or twine for the event, cut in pieces that are never joined. */
export interface PlannedRolls {
  readonly supplyId: string;
  readonly name: string;
  readonly kind: RollSupply['kind'];
  /** The most any one box takes. */
  readonly perBox: Ticks;
  readonly total: Ticks;
  readonly rollLength: Ticks;
  /** Of a roll, what is left of it after its waste. */
  readonly usable: Ticks;
  readonly rolls: RollPlan;
}

/** Things counted onto or into the boxes. */
export interface PlannedPieces {
  readonly supplyId: string;
  readonly name: string;
  readonly kind: PieceSupply['kind'];
  readonly need: number;
}

/** Liquid glue for all joints, with how long it is pressed and left to dry. */
export interface PlannedGlue {
  readonly supplyId: string;
  readonly name: string;
  readonly kind: GlueSupply['kind'];
  readonly grams: number;
  readonly bottleGrams: number;
  readonly bottles: number;
  readonly pressMinutes: number;
  readonly dryMinutes: number;
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
  readonly pieces: readonly PlannedPieces[];
  readonly glue: PlannedGlue | null;
  /** What one pupil's kit holds; null when the order is not for kits. */
  readonly kit: KitList | null;
  /** How the class runs, what it is priced at and what to bring; null when the order is not for kits. */
  readonly lesson: LessonPlan | null;
  /** Bought the cheapest way; the rows are in the order of `ways[…].purchases`. */
  readonly shopping: readonly ShoppingRow[];
  /** Ways of buying all of it, the cheapest at the till first. */
  readonly ways: OrderWays;
  readonly cost: EventCost;
  /** Null: no hourly rate is known. */
  readonly asking: AskingPrice | null;
  readonly hours: EventHours;
  /** How finished favors are carried; null where no crate is known. */
  readonly carry: CarryPlan | null;
  /** Counted back from the date; null without one. */
  readonly timetable: Timetable | null;
  readonly findings: readonly EventFinding[];
  /** The usual words of care about this work and these gifts. */
  readonly cautions: readonly Caution[];
}
