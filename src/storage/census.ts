import type { Census } from './port';

export const NOTHING_COUNTED: Census = { generation: 0, rows: 0, revSum: 0 };

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0;

/** A census from foreign data; null if it is none. */
export function readCensus(raw: unknown): Census | null {
  if (typeof raw !== 'object' || raw === null) return null;
  const { generation, rows, revSum } = raw as Record<keyof Census, unknown>;
  return isCount(generation) && isCount(rows) && isCount(revSum) ? { generation, rows, revSum } : null;
}

/**
 * Whether rows were lost. `noted` stands in the database, `outside` in another place of the same browser, `counted` is what is there.
 * `outside` may lag behind by the last write, since the two are not written together; it may never be ahead.
 */
export function lossOf(noted: Census | null, outside: Census | null, counted: Omit<Census, 'generation'>) {
  const found: Census = { generation: noted?.generation ?? 0, ...counted };
  if (noted && (noted.rows !== counted.rows || noted.revSum !== counted.revSum))
    return { expected: noted, found };
  if (outside && outside.generation > found.generation) return { expected: outside, found };
  return null;
}
