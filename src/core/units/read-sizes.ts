import type { LengthUnit } from './marks';
import { readLength, type TypedUnit } from './read-length';
import type { Ticks } from './ticks';

/** Between two lengths of a size: `2 x 2 x 3`, `2 × 2 × 3`, `2 by 2 by 3`. */
const BETWEEN = /\s*(?:[x×*✕]|by)\s*/iu;

/**
 * Several lengths written as one size; a unit written once, at the end, holds for all of them. Null where any of them does not read.
 * `2 x 2 x 3 in` gives three lengths, `12x12` two, `40 mm` one.
 */
export function readSizes(text: string, unit: LengthUnit): readonly Ticks[] | null {
  const parts = text.trim().split(BETWEEN);
  const last = readLength(parts.at(-1) ?? '', unit);
  if (!last.ok) return null;
  const named: TypedUnit = last.heard.unit;
  const lengths = parts.map((part) => {
    const read = readLength(/\p{L}|["'″′”]/u.test(part) ? part : `${part} ${named}`, unit);
    return read.ok && read.length > 0 ? read.length : null;
  });
  return lengths.every((length) => length !== null) ? lengths : null;
}
