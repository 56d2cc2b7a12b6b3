import { pointsToBuy } from './mix-row';
import { priceList, stepsOf } from './price-list';
import type { MixFormat, MixOrder, MixRow } from './types';

/** How many sheets of each format are bought, in the order of the formats, and the least that costs. */
interface LeastPurchase {
  readonly sheets: readonly number[];
  readonly priceMinor: number;
}

/** What is known after looking: no purchase that holds enough costs less than `atLeast`; the cheapest one, if any was found below the limit. */
export interface PurchaseFound {
  readonly atLeast: number;
  readonly purchase: LeastPurchase | null;
}

const MOST_NODES = 200_000; // source: our own
const GRAINS = 10_000; // Into how many equal amounts the limit is divided at most. source: our own

/** A purchase of one format that buys most for its price. */
interface Choice {
  readonly sheets: number;
  readonly price: number;
}

/** Finds the cheapest purchase whose sheets hold enough points in every row: tries format after format, cheapest first, and turns back where the points cannot be had below the best price any more. */
export class PurchaseSearch {
  private readonly formats: readonly MixFormat[];
  private readonly choices: readonly (readonly Choice[])[];
  private readonly rows: { readonly need: number; readonly most: readonly number[]; readonly reach: readonly Float64Array[] }[] = []; // biome-ignore format: one row
  private readonly order: MixOrder;
  private readonly limit: number;
  private readonly grain: number;

  /** Purchases below `limit` are looked at. `mostSheets` are never all needed of any one format. */
  constructor(order: MixOrder, limit: number, mostSheets: number) {
    this.order = order;
    this.formats = order.formats;
    this.limit = limit;
    this.grain = Math.max(1, Math.ceil(limit / GRAINS));
    this.choices = order.formats.map(({ packs }) => choicesOf(priceList(packs, mostSheets), limit));
  }

  addRow(row: MixRow): void {
    const most = this.formats.map(({ sheet }) => row.most[sheet.id] ?? 0);
    this.rows.push({ need: pointsToBuy(this.order, row), most, reach: this.reachOf(most) });
  }

  /** Whether these sheets hold enough in every row. */
  holds(sheets: readonly number[]): boolean {
    return this.rows.every(({ need, most }) => sheets.reduce((sum, count, at) => sum + count * most[at]!, 0) >= need); // biome-ignore format: one row
  }

  /** The cheapest purchase below `below` that holds enough and is not within any of `without`, sheet for sheet. */
  cheapest(below: number, without: readonly (readonly number[])[]): PurchaseFound {
    let best: LeastPurchase | null = null;
    let nodes = 0;
    const sheets = this.formats.map(() => 0);
    const left = this.rows.map(({ need }) => need);
    const first = this.leastFrom(0, left);
    const visit = (at: number, price: number): void => {
      if (++nodes > MOST_NODES) return;
      if (price + this.leastFrom(at, left) >= (best?.priceMinor ?? below)) return;
      if (at === this.formats.length) {
        if (without.some((each) => sheets.every((count, i) => count <= each[i]!))) return;
        best = { sheets: [...sheets], priceMinor: price };
        return;
      }
      for (const choice of this.choices[at]!) {
        if (price + choice.price >= (best?.priceMinor ?? below)) break;
        sheets[at] = choice.sheets;
        for (const [row, { most }] of this.rows.entries()) left[row]! -= choice.sheets * most[at]!;
        visit(at + 1, price + choice.price);
        for (const [row, { most }] of this.rows.entries()) left[row]! += choice.sheets * most[at]!;
      }
      sheets[at] = 0;
    };
    visit(0, 0);
    const found = best as LeastPurchase | null;
    return { atLeast: nodes > MOST_NODES ? Math.min(below, first) : (found?.priceMinor ?? below), purchase: found }; // biome-ignore format: one row
  }

  /** What the formats from `at` on must cost at least, so that every row gets what it still lacks. */
  private leastFrom(at: number, left: readonly number[]): number {
    let least = 0;
    for (const [row, { reach }] of this.rows.entries()) {
      const need = left[row]!;
      if (need <= 0) continue;
      const points = reach[at]!;
      let [low, high] = [-1, points.length];
      while (high - low > 1) {
        const middle = (low + high) >>> 1;
        if (points[middle]! >= need) high = middle;
        else low = middle;
      }
      least = Math.max(least, high * this.grain);
    }
    return least;
  }

  /** For the formats from each on: the most points that so much money buys, prices rounded down to whole grains. */
  private reachOf(most: readonly number[]): Float64Array[] {
    const money = Math.ceil(this.limit / this.grain);
    const reach: Float64Array[] = [new Float64Array(money + 1)];
    for (const [at, { packs }] of [...this.formats.entries()].reverse()) {
      const points = Float64Array.from(reach[0]!);
      for (const { units, price } of packs.flatMap(stepsOf)) {
        const worth = units * most[at]!;
        const cost = Math.floor(price / this.grain);
        if (worth === 0) continue;
        if (cost === 0) points.fill(Number.POSITIVE_INFINITY);
        for (let spent = cost; spent <= money; spent++)
          points[spent] = Math.max(points[spent]!, points[spent - cost]! + worth);
      }
      reach.unshift(points);
    }
    return reach;
  }
}

/** Of every price the most sheets. */
function choicesOf(prices: Float64Array, limit: number): Choice[] {
  const choices: Choice[] = [];
  for (let sheets = 0; sheets < prices.length && prices[sheets]! < limit; sheets++)
    if (prices[sheets + 1] !== prices[sheets]) choices.push({ sheets, price: prices[sheets]! });
  return choices;
}
