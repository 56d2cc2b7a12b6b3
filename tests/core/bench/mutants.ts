import type { BenchOp } from '../../../src/core/bench';

/** A program with one thing changed. */
export interface Mutant {
  readonly ops: readonly BenchOp[];
  /** The act changed, and where in it: `at`, `span.to`, `lines.0.a.x`; `dropped` when it is left out. */
  readonly op: number;
  readonly path: string;
}

/** Every number 1/16 in longer, every angle 5 degrees wider, every turn a quarter further, every act left out: one change each. */
export function* mutantsOf(ops: readonly BenchOp[]): Generator<Mutant> {
  for (const [i, act] of ops.entries()) {
    yield { ops: ops.filter((_, at) => at !== i), op: i, path: 'dropped' };
    for (const { path, changed } of changesOf(act, ''))
      yield { ops: ops.map((other, at) => (at === i ? (changed as BenchOp) : other)), op: i, path };
  }
}

function* changesOf(value: unknown, path: string): Generator<{ path: string; changed: unknown }> {
  if (typeof value === 'number') yield { path, changed: changeNumber(value, path) };
  else if (Array.isArray(value)) {
    for (const [i, part] of value.entries())
      for (const change of changesOf(part, `${path}.${i}`))
        yield { path: change.path, changed: value.with(i, change.changed) };
  } else if (typeof value === 'object' && value !== null) {
    for (const [name, part] of Object.entries(value))
      for (const change of changesOf(part, `${path}.${name}`))
        yield { path: change.path, changed: { ...value, [name]: change.changed } };
  }
}

const SIXTEENTH = 508;

function changeNumber(value: number, path: string): number {
  if (path.endsWith('.quarters')) return (value % 3) + 1;
  return /deg/i.test(path) ? value + 5 : value + SIXTEENTH;
}
