import type { Counted } from '../state/shown-event';
import { keptValues } from './kept-values';
import type { Writes } from './shown-notes';

/** What this browser keeps of a link that it was opened with. */
export interface Visited {
  /** What this device counts under. */
  readonly device: string;
  readonly own: readonly Counted[];
  /** The same as the server last acknowledged it. */
  readonly sent: readonly Counted[];
  /** What was last shown. */
  readonly shown: Writes;
}

/** Where that is kept, apart from any workbook of this browser. */
export const memoryOfVisits = (database: string) => keptValues<Visited>(`${database}.visits`);
export type MemoryOfVisits = Pick<ReturnType<typeof memoryOfVisits>, 'read' | 'keep' | 'forget'>;
