/**
 * Counts of every item side by side in a few machine words, each with one guard bit, so that "is the sum of two within the demands" is one
 * addition and one mask a word.
 */
export interface PackedCounts {
  readonly words: number;
  readonly word: Int32Array;
  readonly shift: Int32Array;
  readonly mask: Int32Array;
  /** Added to a sum, lifts a count over its demand into the guard bit. */
  readonly lift: Int32Array;
  readonly guard: Int32Array;
}

const BITS = 31; // Of 32: the sign bit stays clear.

export function packCounts(demands: readonly number[]): PackedCounts {
  const places = demands.map(() => ({ word: 0, shift: 0 }));
  const widths = demands.map((demand) => Math.max(1, Math.ceil(Math.log2(demand + 1))));
  let [word, shift] = [0, 0];
  for (const [item, width] of widths.entries()) {
    if (shift + width + 1 > BITS) {
      word++;
      shift = 0;
    }
    places[item] = { word, shift };
    shift += width + 1;
  }
  const lift = new Int32Array(word + 1);
  const guard = new Int32Array(word + 1);
  for (const [item, width] of widths.entries()) {
    const place = places[item]!;
    lift[place.word] = lift[place.word]! + ((2 ** width - 1 - demands[item]!) << place.shift);
    guard[place.word] = guard[place.word]! | (1 << (place.shift + width));
  }
  return {
    words: word + 1,
    word: Int32Array.from(places, (place) => place.word),
    shift: Int32Array.from(places, (place) => place.shift),
    mask: Int32Array.from(widths, (width) => 2 ** width - 1),
    lift,
    guard,
  };
}
