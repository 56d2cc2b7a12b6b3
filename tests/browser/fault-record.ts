import { expect, type TestInfo } from '@playwright/test';

/** What a spec of one fault came to; `npm test` prints all of them in the one table, beside those of the unit tests. */
export interface FaultRecord {
  readonly fault: string;
  readonly tries: number;
  readonly lost: number;
  readonly goal: number;
  /** What was lost, told where more was lost than may be. */
  readonly what?: string;
}

/** Notes what was tried for the table, and fails the spec if more was lost than may be. */
export function recordFault(info: TestInfo, record: FaultRecord): void {
  info.annotations.push({ type: 'fault', description: JSON.stringify(record) });
  expect(record.lost, [record.fault, record.what].filter(Boolean).join('; ')).toBeLessThanOrEqual(
    record.goal,
  );
}
