import type { EventPlan, EventRows } from '../core/plan';

/** One event to be planned. Answers carry the same number; a newer question makes an older answer worthless. */
export interface PlanQuestion {
  readonly number: number;
  readonly rows: EventRows;
  readonly eventId: string;
}

export interface PlanAnswer {
  readonly number: number;
  readonly plan: EventPlan | null;
  /** False: it is shown, and a better one is looked for. */
  readonly done: boolean;
}
