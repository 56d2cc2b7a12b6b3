import { LIES, type Quarters } from '../equal/card-lie';

/** A set of lies is a number with a bit for each. */
const liesIn = (set: number): readonly Quarters[] => LIES.filter((lie) => (set >> lie) % 2 === 1);

/** Every set of lies that is not empty, the smaller first. */
export const LIE_SETS = Array.from({ length: 15 }, (_, i) => liesIn(i + 1)).sort(
  (one, other) => one.length - other.length,
);

/** One lie after another, as one bit of sixteen; a lie after itself is none. */
export const pairBit = (one: number, other: number): number => (one === other ? 0 : 1 << (4 * one + other));

/** For each set of lies, all pairs in it. */
export const PAIRS_IN = Array.from({ length: 16 }, (_, set) =>
  liesIn(set)
    .flatMap((one) => liesIn(set).map((other) => pairBit(one, other)))
    .reduce((bits, bit) => bits | bit, 0),
);

/** For `4 * set + lie`: turning once round a set of lies, beginning as the card lies. */
export const ROUNDS = Array.from({ length: 64 }, (_, i) => {
  const [from, lies] = [i % 4, liesIn(i >> 2)];
  const ahead = (lie: number) => (lie - from + 4) % 4;
  const last = lies.reduce<number>((far, lie) => (ahead(lie) > ahead(far) ? lie : far), from);
  return { turns: lies.filter((lie) => lie !== from).length, last };
});
