import type { Pattern } from '../pattern/pattern';
import { CoverMaster } from './cover-master';
import type { Effort } from './effort';
import type { PatternUse } from './pattern-plan';
import type { FindPattern } from './sequential-plan';

/** Dear enough that no mixture keeps a part that lies on no sheet, unless no pattern takes it. */
const LOOSE_COST = 4;
const ROUNDS = 300; // Patterns asked for in one mixture, far more than were ever met. source: our own, measured

/**
 * Dives that ask for new patterns on the way down: whole sheets of a mixture are fixed, then one of a large fraction, and what is left is
 * mixed again from patterns that take no more than is left. Patterns are kept from one dive to the next. A way to find plans, no proof.
 */
export class FreshDives {
  private readonly pool: Pattern[] = [];
  private readonly known = new Map<string, number>();
  private readonly find: FindPattern;
  private readonly sway: () => number;

  constructor(patterns: readonly Pattern[], find: FindPattern, sway: () => number) {
    this.find = find;
    this.sway = sway;
    for (const pattern of patterns) this.take(pattern);
  }

  /** A plan on at most `most` sheets, or null: this time it did not come out. */
  dive(wanted: readonly number[], most: number, effort: Effort): PatternUse[] | null {
    const uses: PatternUse[] = [];
    let left = [...wanted];
    let fixed = 0;
    const fix = (pattern: Pattern, sheets: number): void => {
      uses.push({ pattern, sheets });
      fixed += sheets;
      left = left.map((count, item) => Math.max(0, count - sheets * pattern.counts[item]!));
    };
    while (left.some((count) => count > 0)) {
      const mixture = this.mix(left, effort);
      if (effort.isSpent() || fixed + mixture.sheets > most + 1e-6) return null;
      let largest = -1;
      let next: Pattern | null = null;
      for (const { pattern, sheets } of mixture.uses) {
        const whole = Math.floor(sheets + 1e-6);
        if (whole > 0) fix(pattern, whole);
        const part = (sheets - whole) * (0.6 + 0.4 * this.sway());
        if (sheets - whole < 1e-6 || part <= largest) continue;
        largest = part;
        next = pattern;
      }
      if (next !== null && left.some((count) => count > 0)) fix(next, 1);
      else if (mixture.uses.length === 0) return null;
    }
    return fixed <= most ? uses : null;
  }

  private take(pattern: Pattern): number {
    const key = pattern.counts.join();
    const at = this.known.get(key) ?? this.pool.push(pattern) - 1;
    this.known.set(key, at);
    return at;
  }

  /** What is left, in fractions of patterns whose copies beyond it are worth nothing. */
  private mix(
    left: readonly number[],
    effort: Effort,
  ): {
    readonly sheets: number;
    readonly uses: readonly { readonly pattern: Pattern; readonly sheets: number }[];
  } {
    const open = [...left.keys()].filter((item) => left[item]! > 0);
    const loose = open.map((_, row) => open.map((_, other) => (other === row ? 1 : 0)));
    const master = new CoverMaster(open.map((item) => left[item]!), loose, LOOSE_COST); // biome-ignore format: one row
    const laid: Pattern[] = [];
    const met = new Set<string>();
    const add = (pattern: Pattern): boolean => {
      const useful = open.map((item) => Math.min(pattern.counts[item]!, left[item]!));
      const key = useful.join();
      if (met.has(key) || useful.every((count) => count === 0)) return false;
      met.add(key);
      master.add(useful);
      laid.push(pattern);
      return true;
    };
    for (const pattern of this.pool) add(pattern);
    for (let round = 0; round < ROUNDS && !effort.isSpent(); round++) {
      effort.spend(master.settle());
      const prices = new Array<number>(left.length).fill(0);
      for (const [row, price] of master.prices().entries()) prices[open[row]!] = Math.max(0, price);
      const pattern = this.find(prices, left);
      const worth = pattern.counts.reduce((sum, count, item) => sum + count * prices[item]!, 0);
      if (worth <= 1 + 1e-6 || !add(this.pool[this.take(pattern)]!)) break;
    }
    const uses = master.uses().filter(({ column }) => column >= open.length);
    return {
      sheets: master.value,
      uses: uses.map(({ column, sheets }) => ({ pattern: laid[column - open.length]!, sheets })),
    };
  }
}
