import type { ReactNode } from 'react';
import type { FavorEvent, Recipe } from '../../../shared/workbook';
import type { EventPlan } from '../../core/plan';
import type { Workbook } from './addresses';
import type { MendOf } from './event-findings';

/** What every page of a workbook is given: the workbook, the recipe looked at, and in an event what it comes to. */
export interface OpenWorkbook {
  readonly workbook: Workbook;
  /** In an event, the one chosen among those it makes; null while it makes none. */
  readonly recipe: Recipe | null;
  /** Every recipe of the workbook, in the order of its lines. */
  readonly recipes: readonly Recipe[];
  readonly event: FavorEvent | null;
  /** The newest plan of the event; null before the first, and for a recipe alone. */
  readonly plan: EventPlan | null;
  /** How a finding of the event is mended at a press. */
  readonly mendOf: MendOf;
  /** A newer plan is being worked out. */
  readonly stale: boolean;
  /** The plan stands; one with fewer sheets is still looked for, until `settle`. */
  readonly bettering: boolean;
  readonly settle: () => void;
  /** Why no plan is on its way, and the way to ask once more; null while all is well. */
  readonly failed: string | null;
  readonly again: () => void;
  /** Where a box of the event has no paper: the way to one; null where all have theirs. */
  readonly choosePaper: ReactNode;
  /** Offered where taped boxes have no tape; null elsewhere. */
  readonly chooseTape: ReactNode;
}
