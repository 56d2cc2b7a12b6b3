import { type Pack, type Purchase, purchaseOf } from './packs';

/** Something to buy: at least `need` units of it, from these packs. */
export interface Wanted {
  readonly need: number;
  readonly packs: readonly Pack[];
}

/** Bits that may be kept at once: about 100 MB. Beyond it the search is given up. */
const MOST_BITS = 8e8;

/**
 * Packs are taken one kind after another, in groups: singles of an offer at most `atMost`, anything else as often as wanted.
 * After each group, `reached[u]` has bit p set when exactly p can be spent for u units (u capped at the need).
 */
interface Group {
  readonly row: number;
  readonly pack: Pack;
  readonly packs: number;
  readonly units: number;
  readonly price: number;
  readonly atMost: number;
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
  if (levels * most > MOST_BITS) return null;

  const history = reachAll(groups, rows, (1n << BigInt(most + 1)) - 1n);
  const end = history.at(-1)?.at(-1) ?? 0n;
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

/** `history[g]` is what is reached before group g; the last entry is the end. A new row starts from all totals that met the one before. */
function reachAll(groups: readonly Group[], rows: readonly Wanted[], mask: bigint): bigint[][] {
  const history: bigint[][] = [];
  let reached: bigint[] = [1n];
  let row = -1;
  for (const group of groups) {
    while (row < group.row) {
      row += 1;
      const met = reached.at(-1) ?? 0n;
      reached = [met, ...new Array<bigint>(rows[row]!.need).fill(0n)];
    }
    history.push(reached);
    reached =
      group.atMost === Number.POSITIVE_INFINITY
        ? takeAny(reached, group, mask)
        : takeSome(reached, group, mask);
  }
  return [...history, reached];
}

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

/** From the end back to nothing: how many packs of each group lie on the way. */
function walkBack(
  end: number,
  groups: readonly Group[],
  rows: readonly Wanted[],
  history: readonly (readonly bigint[])[],
): readonly Purchase[] {
  const counts = new Map<Pack, number>();
  let total = end;
  let units = 0;
  for (const [g, group] of [...groups.entries()].reverse()) {
    if (groups[g + 1]?.row !== group.row) units = rows[group.row]!.need;
    const back = stepBack(total, units, group, history[g]!);
    total -= back.taken * group.price;
    units = back.units;
    counts.set(group.pack, (counts.get(group.pack) ?? 0) + back.taken * group.packs);
  }
  return rows.map(({ need, packs }) =>
    purchaseOf(
      need,
      packs.map((pack) => [pack, counts.get(pack) ?? 0]),
    ),
  );
}

/** The fewest of a group that lead to these units and total, and the units there were before. */
function stepBack(
  total: number,
  units: number,
  group: Group,
  before: readonly bigint[],
): { readonly taken: number; readonly units: number } {
  const need = before.length - 1;
  for (let taken = 0; taken <= group.atMost && taken * group.price <= total; taken++) {
    const least = Math.max(0, units - taken * group.units);
    const highest = units === need ? need : units - taken * group.units;
    for (let from = least; from <= highest; from++)
      if (hasBit(before[from]!, total - taken * group.price)) return { taken, units: from };
  }
  throw new RangeError('a total that was reached has no way back');
}
