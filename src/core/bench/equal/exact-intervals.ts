/** An exact place along a line: n/d with d > 0, always reduced. Numbers would round where a slanted line crosses another. */
export interface Place {
  readonly n: bigint;
  readonly d: bigint;
}

/** A stretch of a line, from < to. */
export interface Stretch {
  readonly from: Place;
  readonly to: Place;
}

/** Disjoint stretches in rising order, none touching the next. */
export type Stretches = readonly Stretch[];

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));

/** The place over/under, reduced; `under` is not 0. */
export function placeOf(over: bigint, under = 1n): Place {
  if (under === 1n) return { n: over, d: 1n };
  const shared = gcd(over, under) * (under < 0n ? -1n : 1n);
  return { n: over / shared, d: under / shared };
}

export const wholePlace = (at: number): Place => ({ n: BigInt(at), d: 1n });

export const comparePlaces = (a: Place, b: Place): number => {
  const [left, right] = a.d === b.d ? [a.n, b.n] : [a.n * b.d, b.n * a.d];
  return left < right ? -1 : left > right ? 1 : 0;
};

export const stretch = (a: number, b: number): Stretch => ({
  from: wholePlace(Math.min(a, b)),
  to: wholePlace(Math.max(a, b)),
});

const later = (a: Place, b: Place): Place => (comparePlaces(a, b) < 0 ? b : a);
const sooner = (a: Place, b: Place): Place => (comparePlaces(a, b) < 0 ? a : b);

/** Any stretches, overlapping or touching, as disjoint ones. */
export function mergeStretches(stretches: Stretches): Stretches {
  if (stretches.length < 2) return stretches;
  const merged: Stretch[] = [];
  for (const next of [...stretches].sort((a, b) => comparePlaces(a.from, b.from))) {
    const last = merged.at(-1);
    if (last && comparePlaces(next.from, last.to) <= 0)
      merged[merged.length - 1] = { from: last.from, to: later(last.to, next.to) };
    else merged.push(next);
  }
  return merged;
}

/** Crossings of a closed boundary, in any order, as the stretches between every second pair. */
export function pairPlaces(places: Place[]): Stretches {
  places.sort(comparePlaces);
  const pairs: Stretch[] = [];
  for (let i = 0; i + 1 < places.length; i += 2) {
    const from = places[i];
    const to = places[i + 1];
    if (from && to && comparePlaces(from, to) < 0) pairs.push({ from, to });
  }
  return mergeStretches(pairs);
}

/** What both hold. */
export function shareStretches(some: Stretches, others: Stretches): Stretches {
  const shared: Stretch[] = [];
  for (const one of some)
    for (const other of others) {
      const from = later(one.from, other.from);
      const to = sooner(one.to, other.to);
      if (comparePlaces(from, to) < 0) shared.push({ from, to });
    }
  return shared;
}

/** What the first holds and the second does not. */
export function cutStretches(some: Stretches, away: Stretches): Stretches {
  let left: Stretches = some;
  for (const gone of away)
    left = left.flatMap((one) => {
      if (comparePlaces(gone.to, one.from) <= 0 || comparePlaces(gone.from, one.to) >= 0) return [one];
      const pieces: Stretch[] = [];
      if (comparePlaces(one.from, gone.from) < 0) pieces.push({ from: one.from, to: gone.from });
      if (comparePlaces(gone.to, one.to) < 0) pieces.push({ from: gone.to, to: one.to });
      return pieces;
    });
  return left;
}

const spellPlace = ({ n, d }: Place): string => (d === 1n ? `${n}` : `${n}/${d}`);
export const spellStretch = ({ from, to }: Stretch): string => `${spellPlace(from)}..${spellPlace(to)}`;
