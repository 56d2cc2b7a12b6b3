import type { BenchOp } from '../types';
import type { Op } from './say-act';

export const only = <Name extends BenchOp['op']>(acts: readonly BenchOp[], name: Name): readonly Op<Name>[] =>
  acts.filter((op): op is Op<Name> => op.op === name);

/** Acts that share a key, in the order of the first of each. */
export function alike<T>(acts: readonly T[], keyOf: (act: T) => string): readonly (readonly T[])[] {
  const runs = new Map<string, T[]>();
  for (const act of acts) runs.set(keyOf(act), [...(runs.get(keyOf(act)) ?? []), act]);
  return [...runs.values()];
}
