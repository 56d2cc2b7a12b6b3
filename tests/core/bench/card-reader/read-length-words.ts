import type { BenchPoint } from '../../../../src/core/bench/types';
import { type LengthUnit, readLength, type Ticks } from '../../../../src/core/units';

/** A length as a card says it; what stands in brackets is the whole truth. Null if it is none. */
export function readSaid(words: string, unit: LengthUnit): Ticks | null {
  const [, exact] = /\(([^)]*)\)$/.exec(words) ?? [];
  const read = exact === undefined ? readLength(words, unit) : readLength(exact, 'mm');
  return read.ok ? read.length : null;
}

/** `3 1/2, 5 and 10 in` as lengths; null if any is none. */
export const readSaidList = (words: string, unit: LengthUnit): readonly Ticks[] | null =>
  every(splitList(words), (one) => readSaid(one, unit));

/** `a, b and c` apart again. */
export const splitList = (words: string): readonly string[] => words.split(/, | and /);

/** `3 × 2`, across and up, as a point. */
export function readSaidPoint(words: string, unit: LengthUnit): BenchPoint | null {
  const [, across = '', up = ''] = /^(.+) × (.+)$/.exec(words) ?? [];
  const x = readSaid(across, unit);
  const y = readSaid(up, unit);
  return x === null || y === null ? null : { x, y };
}

/** Every part read, or null if one cannot be. */
export function every<In, Out>(parts: readonly In[], read: (part: In) => Out | null): readonly Out[] | null {
  const out: Out[] = [];
  for (const part of parts) {
    const made = read(part);
    if (made === null) return null;
    out.push(made);
  }
  return out;
}
