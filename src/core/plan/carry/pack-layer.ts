/** A rectangle on the floor of a carrier, or the floor itself; whole numbers of any unit. */
export interface Foot {
  readonly across: number;
  readonly up: number;
}

/** One box in a layer, from the lower left corner of the floor. */
export interface PlacedFoot extends Foot {
  readonly x: number;
  readonly y: number;
}

/** More five-block splits than this are not looked through. source: our own choice, a tenth of a second */
const MOST_SPLITS = 40_000;

/**
 * As many equal boxes as are found to stand on a floor, each straight or turned a quarter: every edge-to-edge division into grids, and one
 * division into five blocks round a middle, which no edge-to-edge division gives. Source: Bischoff and Dowsland (1982) for the five blocks,
 * from memory. Not proven to be the most.
 */
export function packLayer(floor: Foot, foot: Foot): readonly PlacedFoot[] {
  if (foot.across <= 0 || foot.up <= 0) return [];
  const plans = new Plans(foot);
  return plans.place(plans.bestWithMiddle(floor), 0, 0);
}

/** Never can more stand there: the floor, less what no row of boxes reaches, over one box. */
export function mostInLayer(floor: Foot, foot: Foot): number {
  const reach = (length: number) => Math.max(0, ...sumsUpTo(length, foot));
  return Math.floor((reach(floor.across) * reach(floor.up)) / (foot.across * foot.up));
}

type Plan =
  | {
      readonly kind: 'grid';
      readonly count: number;
      readonly foot: Foot;
      readonly columns: number;
      readonly rows: number;
    }
  | {
      readonly kind: 'parts';
      readonly count: number;
      readonly parts: readonly { readonly x: number; readonly y: number; readonly plan: Plan }[];
    };

class Plans {
  readonly #known = new Map<string, Plan>();
  readonly #foot: Foot;

  constructor(foot: Foot) {
    this.#foot = foot;
  }

  /** The best edge-to-edge division of a floor. */
  best(floor: Foot): Plan {
    const [across, up] = [this.#reach(floor.across), this.#reach(floor.up)];
    const key = `${across} ${up}`;
    const known = this.#known.get(key);
    if (known) return known;
    const found = this.#search({ across, up });
    this.#known.set(key, found);
    return found;
  }

  /** The same, or five blocks of them round a middle where that holds more. */
  bestWithMiddle(floor: Foot): Plan {
    let best = this.best(floor);
    const [xs, ys] = [sumsUpTo(floor.across, this.#foot), sumsUpTo(floor.up, this.#foot)];
    const pairs = (count: number) => (count * (count - 1)) / 2;
    if (pairs(xs.length) * pairs(ys.length) > MOST_SPLITS) return best;
    const most = mostInLayer(floor, this.#foot);
    for (const [i, x1] of xs.entries())
      for (const x2 of xs.slice(i + 1))
        for (const [j, y1] of ys.entries())
          for (const y2 of ys.slice(j + 1)) {
            if (best.count === most) return best;
            const parts = [
              { x: 0, y: 0, plan: this.best({ across: x2, up: y1 }) },
              { x: x2, y: 0, plan: this.best({ across: floor.across - x2, up: y2 }) },
              { x: x1, y: y2, plan: this.best({ across: floor.across - x1, up: floor.up - y2 }) },
              { x: 0, y: y1, plan: this.best({ across: x1, up: floor.up - y1 }) },
              { x: x1, y: y1, plan: this.best({ across: x2 - x1, up: y2 - y1 }) },
            ];
            const count = parts.reduce((sum, { plan }) => sum + plan.count, 0);
            if (count > best.count) best = { kind: 'parts', count, parts };
          }
    return best;
  }

  place(plan: Plan, x: number, y: number): readonly PlacedFoot[] {
    if (plan.kind === 'parts')
      return plan.parts.flatMap((part) => this.place(part.plan, x + part.x, y + part.y));
    const { across, up } = plan.foot;
    return Array.from({ length: plan.count }, (_, at) => ({
      x: x + (at % plan.columns) * across,
      y: y + Math.floor(at / plan.columns) * up,
      across,
      up,
    }));
  }

  #search(floor: Foot): Plan {
    const { across, up } = this.#foot;
    const grids = [this.#foot, { across: up, up: across }].map((foot): Plan => {
      const [columns, rows] = [Math.floor(floor.across / foot.across), Math.floor(floor.up / foot.up)];
      return { kind: 'grid', count: columns * rows, foot, columns, rows };
    });
    let best = grids.reduce((a, b) => (b.count > a.count ? b : a));
    const most = mostInLayer(floor, this.#foot);
    const take = (first: Plan, second: Plan, x: number, y: number) => {
      const count = first.count + second.count;
      if (count > best.count)
        best = {
          kind: 'parts',
          count,
          parts: [
            { x: 0, y: 0, plan: first },
            { x, y, plan: second },
          ],
        };
    };
    for (const x of sumsUpTo(floor.across / 2, this.#foot)) {
      if (best.count === most || x === 0) continue;
      take(this.best({ ...floor, across: x }), this.best({ ...floor, across: floor.across - x }), x, 0);
    }
    for (const y of sumsUpTo(floor.up / 2, this.#foot)) {
      if (best.count === most || y === 0) continue;
      take(this.best({ ...floor, up: y }), this.best({ ...floor, up: floor.up - y }), 0, y);
    }
    return best;
  }

  #reach(length: number): number {
    return Math.max(0, ...sumsUpTo(length, this.#foot));
  }
}

/** Every length that boxes in a row, straight or turned, can reach: 0 first. */
function sumsUpTo(length: number, { across, up }: Foot): readonly number[] {
  const sums = new Set<number>();
  for (let turned = 0; turned <= length; turned += up)
    for (let sum = turned; sum <= length; sum += across) sums.add(sum);
  return [...sums].sort((a, b) => a - b);
}
