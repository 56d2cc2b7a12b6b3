import type { EventMix, EventRows } from '../core/plan';

/** One event, and the cheapest ways to cut it from the papers its lines allow. */
export interface MixQuestion {
  readonly rows: EventRows;
  readonly eventId: string;
}

/** Every better mix on the way; `null` with the last. */
export interface MixAnswer {
  readonly mix: EventMix | null;
}
