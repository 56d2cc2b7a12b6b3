import type { EventPlan, EventRows } from '../core/plan';
import type { CuttingTool, SheetCount, SheetPaper, SheetPart, SheetPlan } from '../core/yield';

/** One event to be planned. Answers carry the same number; a newer question makes an older answer worthless. */
export interface PlanQuestion {
  readonly number: number;
  readonly rows: EventRows;
  readonly eventId: string;
}

export type PlanAnswer =
  | {
      readonly number: number;
      readonly plan: EventPlan | null;
      /** False: it is shown, and a better one is looked for. */
      readonly done: boolean;
    }
  | (Failed & { readonly number: number });

/** It could not be worked out; a slip in the words of whoever met it. */
export interface Failed {
  readonly failed: string;
}

/** How many of one part a sheet gives at most. */
export interface CountAsk {
  readonly part: Omit<SheetPart, 'count'>;
  readonly paper: SheetPaper;
  readonly tool: CuttingTool;
}

/** How parts that belong to no event are cut from one paper. */
export interface CutAsk {
  readonly parts: readonly SheetPart[];
  readonly paper: SheetPaper;
  readonly tool: CuttingTool;
}

/** A question about one paper; the answers come in the order asked. */
export type SheetQuestion = { readonly count: CountAsk } | { readonly cut: CutAsk };

/** `done` false: it is shown, and a better plan is looked for. */
export type SheetAnswer =
  | { readonly count: SheetCount; readonly done: true }
  | { readonly cut: SheetPlan; readonly done: boolean };
