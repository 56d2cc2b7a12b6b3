import { expect, type TestContext } from 'vitest';

/** What a test of one fault came to; the test run prints all of them in one table. */
export interface FaultRecord {
  readonly fault: string;
  readonly tries: number;
  /** Rows, edits or keystrokes that were lost, or files that did harm. */
  readonly lost: number;
  /** Most that may be lost. */
  readonly goal: number;
}

declare module 'vitest' {
  interface TaskMeta {
    fault?: FaultRecord;
  }
}

/** Notes what was tried for the table, and fails the test if more was lost than may be. */
export function recordFault({ task }: Pick<TestContext, 'task'>, record: FaultRecord): void {
  task.meta.fault = record;
  expect(record.lost, record.fault).toBeLessThanOrEqual(record.goal);
}
