/**
 * The linear program "fewest sheets, every demand covered" over the patterns met so far: dense revised simplex with an explicit inverse.
 * Columns are pattern counts (cost 1, if not said) and surpluses (cost 0). A row of demand below 0 caps what its columns take from it. Only a
 * guide: what it claims is proven elsewhere, in whole numbers. Source: Gilmore & Gomory, Oper. Res. 9 (1961) 849-859.
 */
export class CoverMaster {
  readonly columns: (readonly number[])[] = [];
  private readonly costs: number[] = [];
  /** Column in each basis place; -1 - i is the surplus of row i. */
  private readonly basis: Int32Array;
  private readonly inverse: Float64Array;
  private readonly amounts: Float64Array;
  private readonly perturbed: Float64Array;
  private sinceFactored = 0;
  private readonly demands: readonly number[];

  /** `starting` holds one column for each row that is no cap, with copies of that row's item alone; caps are the last rows. */
  constructor(demands: readonly number[], starting: readonly (readonly number[])[], cost = 1) {
    this.demands = demands;
    const rows = demands.length;
    for (const counts of starting) this.add(counts, cost);
    this.basis = Int32Array.from(demands, (_, row) => (row < starting.length ? row : -1 - row));
    this.inverse = new Float64Array(rows * rows);
    // A little more of each, different for every row, so that no two rows run out at once and the simplex cannot circle.
    this.perturbed = Float64Array.from(
      demands,
      (demand, row) => demand + 1e-6 * (1 + ((row * 7919) % 997) / 997),
    );
    this.amounts = new Float64Array(rows);
    for (let row = 0; row < rows; row++) {
      const copies = row < starting.length ? (starting[row]?.[row] ?? 1) : -1;
      this.inverse[row * rows + row] = 1 / copies;
      this.amounts[row] = this.perturbed[row]! / copies;
    }
  }

  /** Price of one more copy of each item. */
  prices(): Float64Array {
    const rows = this.demands.length;
    const prices = new Float64Array(rows);
    for (let place = 0; place < rows; place++) {
      if (this.basis[place]! < 0) continue;
      const cost = this.costs[this.basis[place]!]!;
      for (let row = 0; row < rows; row++)
        prices[row] = prices[row]! + cost * this.inverse[place * rows + row]!;
    }
    return prices;
  }

  /** Sheets, in fractions; columns of another cost count as that many. */
  get value(): number {
    return this.uses().reduce((sum, { column, sheets }) => sum + this.costs[column]! * sheets, 0);
  }

  /** Patterns in the basis and how many sheets each, in fractions. */
  uses(): { readonly column: number; readonly sheets: number }[] {
    const rows = this.demands.length;
    const uses: { column: number; sheets: number }[] = [];
    for (let place = 0; place < rows; place++) {
      const column = this.basis[place]!;
      if (column < 0) continue;
      let sheets = 0;
      for (let row = 0; row < rows; row++) sheets += this.inverse[place * rows + row]! * this.demands[row]!;
      if (sheets > 1e-9) uses.push({ column, sheets });
    }
    return uses;
  }

  /** Brings in surpluses and known patterns until none of them improves the plan; answers the steps it took. */
  settle(): number {
    const rows = this.demands.length;
    let steps = 0;
    for (let round = 0; round < 20_000; round++) {
      const prices = this.prices();
      const entering = this.mostWanted(prices);
      steps += rows * (this.columns.length + 3 * rows);
      if (entering === null || !this.enter(entering)) break;
    }
    return steps;
  }

  /** Adds a pattern; the next `settle` may use it. */
  add(counts: readonly number[], cost = 1): number {
    this.costs.push(cost);
    return this.columns.push(counts) - 1;
  }

  /** Another cost for a column, before the first `settle`. */
  reprice(column: number, cost: number): void {
    this.costs[column] = cost;
  }

  private mostWanted(prices: Float64Array): number | null {
    let best: number | null = null;
    let least = -1e-9;
    for (let row = 0; row < prices.length; row++)
      if (prices[row]! < least) {
        least = prices[row]!;
        best = -1 - row;
      }
    if (best !== null) return best;
    for (const [column, counts] of this.columns.entries()) {
      let cost = this.costs[column]!;
      for (let row = 0; row < prices.length; row++) cost -= prices[row]! * counts[row]!;
      if (cost < least) {
        least = cost;
        best = column;
      }
    }
    return best;
  }

  private enter(column: number): boolean {
    const rows = this.demands.length;
    const direction = new Float64Array(rows);
    for (let place = 0; place < rows; place++) {
      if (column < 0) direction[place] = -this.inverse[place * rows - 1 - column]!;
      else {
        const counts = this.columns[column] as readonly number[];
        let sum = 0;
        for (let row = 0; row < rows; row++) sum += this.inverse[place * rows + row]! * counts[row]!;
        direction[place] = sum;
      }
    }
    let leaving = -1;
    let step = Number.POSITIVE_INFINITY;
    for (let place = 0; place < rows; place++) {
      const slope = direction[place]!;
      if (slope <= 1e-9) continue;
      const ratio = this.amounts[place]! / slope;
      if (ratio < step) {
        step = ratio;
        leaving = place;
      }
    }
    if (leaving < 0) return false;
    this.pivot(leaving, column, direction, Math.max(step, 0));
    return true;
  }

  private pivot(leaving: number, column: number, direction: Float64Array, step: number): void {
    const rows = this.demands.length;
    const { inverse, amounts } = this;
    const slope = direction[leaving]!;
    for (let row = 0; row < rows; row++)
      inverse[leaving * rows + row] = inverse[leaving * rows + row]! / slope;
    for (let place = 0; place < rows; place++) {
      const along = direction[place]!;
      if (place === leaving || along === 0) continue;
      for (let row = 0; row < rows; row++)
        inverse[place * rows + row] = inverse[place * rows + row]! - along * inverse[leaving * rows + row]!;
      amounts[place] = amounts[place]! - along * step;
    }
    amounts[leaving] = step;
    this.basis[leaving] = column;
    if (++this.sinceFactored >= 60) this.refactor();
  }

  /** Computes the inverse again from the basis, by Gauss-Jordan elimination, so that rounding does not build up. */
  private refactor(): void {
    this.sinceFactored = 0;
    const rows = this.demands.length;
    const work = new Float64Array(rows * rows);
    const fresh = new Float64Array(rows * rows);
    for (let place = 0; place < rows; place++) {
      const column = this.basis[place]!;
      fresh[place * rows + place] = 1;
      for (let row = 0; row < rows; row++)
        work[row * rows + place] =
          column < 0 ? (row === -1 - column ? -1 : 0) : (this.columns[column]?.[row] ?? 0);
    }
    if (!invert(work, fresh, rows)) return;
    this.inverse.set(fresh);
    for (let place = 0; place < rows; place++) {
      let sum = 0;
      for (let row = 0; row < rows; row++) sum += fresh[place * rows + row]! * this.perturbed[row]!;
      this.amounts[place] = Math.max(sum, 0);
    }
  }
}

/** Turns `work` into the identity and `fresh` (the identity before) into its inverse; false if singular to working accuracy. */
function invert(work: Float64Array, fresh: Float64Array, size: number): boolean {
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++)
      if (Math.abs(work[row * size + column]!) > Math.abs(work[pivot * size + column]!)) pivot = row;
    const scale = work[pivot * size + column]!;
    if (Math.abs(scale) < 1e-11) return false;
    for (const matrix of [work, fresh])
      for (let i = 0; i < size; i++) {
        const held = matrix[pivot * size + i]!;
        matrix[pivot * size + i] = matrix[column * size + i]!;
        matrix[column * size + i] = held / scale;
      }
    for (let row = 0; row < size; row++) {
      const factor = work[row * size + column]!;
      if (row === column || factor === 0) continue;
      for (const matrix of [work, fresh])
        for (let i = 0; i < size; i++)
          matrix[row * size + i] = matrix[row * size + i]! - factor * matrix[column * size + i]!;
    }
  }
  return true;
}
