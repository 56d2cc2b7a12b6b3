import { type Pack, type Purchase, purchaseOf } from './packs';

/** Something to buy: at least `need` units of it, from these packs. */
export interface Wanted {
  readonly need: number;
  readonly packs: readonly Pack[];
}

/** The search is given up beyond these: totals in units of the prices' common measure, and bits kept in all (about 50 MB). */
const MOST_TOTAL = 300_000;
const MOST_BITS = 4e8;

/**
 * Packs are taken one kind after another, in groups: singles of an offer at most `atMost`, anything else as often as wanted.
 */
interface Group {
  readonly row: number;
  readonly pack: Pack;
  readonly packs: number;
  readonly units: number;
  readonly price: number;
  readonly atMost: number;
}

/** `before[u]` has bit p set when exactly p can be spent for u units of the row, u capped at the need; `after` with the group as well. */
interface Reach {
  readonly before: readonly bigint[];
  readonly after: readonly bigint[];
}

const commonMeasure = (a: number, b: number): number => (b === 0 ? a : commonMeasure(b, a % b));

const hasBit = (bits: bigint, place: number): boolean => place >= 0 && ((bits >> BigInt(place)) & 1n) === 1n;

/**
 * The purchases of every row that together cost the least that is still at least `spend`, buying more than needed where that must be.
 * Exact, over all totals at once. Null: it cannot be spent, or the sums are too large to go through.
 */
export function spendAtLeast(spend: number, rows: readonly Wanted[]): readonly Purchase[] | null {
  const prices = rows
    .flatMap(({ packs }) => packs.map(({ priceMinor }) => priceMinor))
    .filter((price) => price > 0);
  if (prices.length === 0) return null;
  const measure = prices.reduce(commonMeasure);
  const least = Math.ceil(spend / measure);
  const most = least + Math.min(...prices) / measure;
  const groups = rows.flatMap((row, index) => row.packs.flatMap((pack) => groupsOf(pack, index, measure)));
  const levels = groups.reduce((sum, group) => sum + rows[group.row]!.need + 1, 0);
  if (most > MOST_TOTAL || levels * most > MOST_BITS) return null;

  const history = reachAll(groups, rows, (1n << BigInt(most + 1)) - 1n);
  const end = history.at(-1)?.after.at(-1) ?? 0n;
  for (let total = least; total <= most; total++)
    if (hasBit(end, total)) return walkBack(total, groups, rows, history);
  return null;
}

function groupsOf(pack: Pack, row: number, measure: number): Group[] {
  if (pack.units <= 0) return [];
  const price = pack.priceMinor / measure;
  const singles = {
    row,
    pack,
    packs: 1,
    units: pack.units,
    price,
    atMost: pack.offer?.buy ?? Number.POSITIVE_INFINITY,
  };
  if (!pack.offer) return [singles];
  const packs = pack.offer.buy + pack.offer.free;
  const together = { row, pack, packs, units: pack.units * packs, price: price * pack.offer.buy };
  return [singles, { ...together, atMost: Number.POSITIVE_INFINITY }];
}

/** What is reached before and after each group. A new row starts from all totals that met the one before. */
function reachAll(groups: readonly Group[], rows: readonly Wanted[], mask: bigint): Reach[] {
  const history: Reach[] = [];
  let reached: bigint[] = [1n];
  let row = -1;
  for (const group of groups) {
    for (; row < group.row; row++) {
      const met = reached.at(-1) ?? 0n;
      reached = [met, ...new Array<bigint>(rows[row + 1]!.need).fill(0n)];
    }
    const after = isUnbounded(group) ? takeAny(reached, group, mask) : takeSome(reached, group, mask);
    history.push({ before: reached, after });
    reached = after;
  }
  return history;
}

const isUnbounded = ({ atMost }: Group): boolean => atMost === Number.POSITIVE_INFINITY;

function takeAny(before: readonly bigint[], { units, price }: Group, mask: bigint): bigint[] {
  const after = [...before];
  const need = after.length - 1;
  for (let u = 0; u < need; u++) {
    const next = Math.min(need, u + units);
    after[next]! |= (after[u]! << BigInt(price)) & mask;
  }
  if (price > 0)
    for (let shift = BigInt(price); mask >> shift > 0n; shift *= 2n)
      after[need]! |= (after[need]! << shift) & mask;
  return after;
}

function takeSome(before: readonly bigint[], { units, price, atMost }: Group, mask: bigint): bigint[] {
  const after = [...before];
  const need = after.length - 1;
  for (let u = 0; u <= need; u++)
    for (let taken = 1; taken <= atMost; taken++)
      after[Math.min(need, u + taken * units)]! |= (before[u]! << BigInt(taken * price)) & mask;
  return after;
}

/** Where the way back stands: so much spent for so many units of the row. */
interface Place {
  readonly total: number;
  readonly units: number;
}

/** From the end back to nothing: how many packs of each group lie on the way. */
function walkBack(
  end: number,
  groups: readonly Group[],
  rows: readonly Wanted[],
  history: readonly Reach[],
): readonly Purchase[] {
  const counts = new Map<Pack, number>();
  let place: Place = { total: end, units: 0 };
  for (const [g, group] of [...groups.entries()].reverse()) {
    if (groups[g + 1]?.row !== group.row) place = { ...place, units: rows[group.row]!.need };
    const back = isUnbounded(group)
      ? anyBack(place, group, history[g]!)
      : someBack(place, group, history[g]!);
    place = back.place;
    counts.set(group.pack, (counts.get(group.pack) ?? 0) + back.taken * group.packs);
  }
  return rows.map(({ need, packs }) =>
    purchaseOf(
      need,
      packs.map((pack) => [pack, counts.get(pack) ?? 0]),
    ),
  );
}

interface StepBack {
  readonly taken: number;
  readonly place: Place;
}

/** One at a time, until the place was reached without the group. */
function anyBack(end: Place, { units, price }: Group, { before, after }: Reach): StepBack {
  let place = end;
  for (let taken = 0; ; taken++) {
    if (hasBit(before[place.units]!, place.total)) return { taken, place };
    const total = place.total - price;
    const from = unitsBefore(place.units, units, after.length - 1).find(
      (each) => (each < place.units || price > 0) && hasBit(after[each]!, total),
    );
    if (from === undefined) throw new RangeError('a total that was reached has no way back');
    place = { total, units: from };
  }
}

/** All of a limited group at once: the fewest that lead here. */
function someBack(end: Place, { units, price, atMost }: Group, { before }: Reach): StepBack {
  for (let taken = 0; taken <= atMost; taken++) {
    const total = end.total - taken * price;
    const from = unitsBefore(end.units, taken * units, before.length - 1).find((each) =>
      hasBit(before[each]!, total),
    );
    if (from !== undefined) return { taken, place: { total, units: from } };
  }
  throw new RangeError('a total that was reached has no way back');
}

/** Units there may have been before `added` came, the most first: a met need may have been met already, or missed by up to as many. */
function unitsBefore(now: number, added: number, need: number): readonly number[] {
  const least = Math.max(0, now - added);
  if (now < need) return now >= added ? [least] : [];
  return Array.from({ length: need - least + 1 }, (_, i) => need - i);
}
