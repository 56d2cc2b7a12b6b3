import { joinPieces, type Pattern, type PatternTree, patternOf } from '../pattern/pattern';
import { type CuttingProblem, liesOf, reachOf } from '../problem/cutting-problem';
import type { Effort } from '../stock/effort';
import { ABOVE, BESIDE, BlockStore, ITEM, type NewBlock } from './block-store';
import { type BlockSizes, boundAround, workAround } from './outer-bound';
import { type PackedCounts, packCounts } from './packed-counts';

export interface BlockQuestion {
  readonly sizes: BlockSizes;
  readonly values: readonly number[];
  /** Most copies of each item. */
  readonly demands: readonly number[];
  /** Sets of discounts that tighten the bounds; the more, the fewer blocks and the longer each. */
  readonly discounts: readonly (readonly number[])[];
  /** Only patterns worth more than this are looked for. */
  readonly above: number;
  /** Collect every pattern worth more than `above`, not only ever better ones. */
  readonly every?: boolean;
  /** Blocks kept at most. */
  readonly room: number;
}

export interface BlockAnswer {
  /** Null: no pattern is worth more than asked. */
  readonly best: { readonly value: number; readonly tree: PatternTree } | null;
  /** Every pattern asked for, one for each content; empty unless `every` was asked. */
  readonly all: readonly Pattern[];
  /** False: room or effort ran out, and a better pattern may exist. */
  readonly complete: boolean;
}

const READ_AT_MOST = 40_000; // Patterns read out of their blocks; more are of no use to anyone.
const SAME = 1e-7; // Two sums of values closer than this are equal; values are whole or well scaled.

/**
 * The best pattern within the demands, exactly: builds blocks from items, two at a time, and drops a block when even the best that could be
 * cut around it would not do. Rows and stacks are built from their latest block to their earliest, so that each comes about once.
 * Source: Wang, Oper. Res. 31 (1983) 573-586; bounds Viswanathan & Bagchi, Oper. Res. 41 (1993) 768-776.
 */
export function buildBlocks(question: BlockQuestion, effort: Effort): BlockAnswer {
  return new BlockSearch(question, effort).run();
}

class BlockSearch {
  private readonly problem: CuttingProblem;
  private readonly question: BlockQuestion;
  private readonly effort: Effort;
  private readonly packed: PackedCounts;
  private readonly store: BlockStore;
  private readonly around: Float64Array[];
  /** Discounts times demands, by set. */
  private readonly refunds: number[];
  private readonly next: NewBlock;
  private above: number;
  private bestBlock = -1;
  private bestValue = Number.NEGATIVE_INFINITY;
  private readonly found: number[] = [];

  constructor(question: BlockQuestion, effort: Effort) {
    const { sizes, values, demands, discounts } = question;
    this.question = question;
    this.effort = effort;
    this.problem = sizes.table.grid.problem;
    this.packed = packCounts(demands);
    this.store = new BlockStore(this.packed, discounts.length + 1);
    this.around = discounts.map((set) => boundAround(sizes, values.map((value, item) => value - set[item]!))); // biome-ignore format: one line
    effort.spend(discounts.length * workAround(sizes));
    this.refunds = discounts.map((set) => set.reduce((sum, each, item) => sum + each * demands[item]!, 0));
    this.above = question.above;
    this.next = {
      width: 0,
      height: 0,
      kind: ITEM,
      tail: -1,
      first: 0,
      second: 0,
      counts: new Int32Array(this.packed.words),
      scores: new Float64Array(discounts.length + 1),
    };
  }

  run(): BlockAnswer {
    this.addItems();
    const rows: number[] = [];
    const stacks: number[] = [];
    let complete = true;
    for (let block = 0; block < this.store.size; block++) {
      if (this.store.size > this.question.room || ((block & 31) === 0 && this.effort.isSpent())) {
        complete = false;
        break;
      }
      // A row may take in anything that is no row itself, a stack anything that is no stack.
      if (this.store.kind[block] !== BESIDE) rows.push(block);
      if (this.store.kind[block] !== ABOVE) stacks.push(block);
      if (this.store.beaten[block] === 1 || !this.promises(block)) continue;
      this.extend(block, BESIDE, rows);
      this.extend(block, ABOVE, stacks);
    }
    const items = this.question.values.length;
    const all = this.found.slice(0, READ_AT_MOST).map((block) => patternOf(this.read(block), items));
    if (this.found.length > READ_AT_MOST) complete = false;
    if (this.bestBlock < 0) return { best: null, all, complete };
    const tree = this.read(this.bestBlock);
    return { best: { value: this.bestValue, tree }, all, complete };
  }

  private addItems(): void {
    const { values, demands, discounts } = this.question;
    for (const lie of liesOf(this.problem)) {
      if (demands[lie.item]! <= 0) continue;
      const { next, packed } = this;
      Object.assign(next, { width: lie.width, height: lie.height, kind: ITEM, tail: -1, first: lie.item, second: lie.turned ? 1 : 0 }); // biome-ignore format: one line
      next.counts.fill(0);
      next.counts[packed.word[lie.item]!] = 1 << packed.shift[lie.item]!;
      next.scores[0] = values[lie.item]!;
      for (const [set, each] of discounts.entries())
        next.scores[set + 1] = values[lie.item]! - each[lie.item]!;
      this.keep();
    }
  }

  private keep(): void {
    const blocks = this.store.size;
    if (!this.store.add(this.next)) return;
    const value = this.next.scores[0]!;
    if (value <= this.above + SAME) return;
    if (this.question.every === true) this.found.push(blocks);
    else this.above = value;
    if (value <= this.bestValue) return;
    this.bestValue = value;
    this.bestBlock = blocks;
  }

  /** Whether a block can still grow into something better than the best. */
  private promises(block: number): boolean {
    const { store, around, refunds, above } = this;
    const { sizes } = this.question;
    const cell =
      sizes.widthAt[store.width[block]!]! * sizes.heights.length + sizes.heightAt[store.height[block]!]!;
    const from = block * (around.length + 1) + 1;
    for (let set = 0; set < around.length; set++)
      if (store.scores[from + set]! + around[set]![cell]! + refunds[set]! <= above + SAME) return false;
    return true;
  }

  private extend(block: number, kind: number, others: readonly number[]): void {
    const { store, next, packed, around, refunds } = this;
    const { sizes } = this.question;
    const sets = around.length;
    const beside = kind === BESIDE;
    const reach = reachOf(this.problem);
    const latest = store.kind[block] === kind ? store.tail[block]! : block;
    const room = beside
      ? this.problem.width - store.width[block]!
      : this.problem.height - store.height[block]!;
    const [width, height] = [store.width[block]!, store.height[block]!];
    const own = block * (sets + 1);
    const steps = others.length;
    for (let i = 0; i < steps; i++) {
      const other = others[i]!;
      if (other > latest) break;
      if (store.beaten[other] === 1 || (beside ? store.width[other]! : store.height[other]!) > room) continue;
      next.width = beside ? width + store.width[other]! : Math.max(width, store.width[other]!);
      next.height = beside ? Math.max(height, store.height[other]!) : height + store.height[other]!;
      if ((beside ? next.height : next.width) > reach) continue;
      const cell = sizes.widthAt[next.width]! * sizes.heights.length + sizes.heightAt[next.height]!;
      const theirs = other * (sets + 1);
      let isWorth = true;
      for (let set = 0; set < sets && isWorth; set++) {
        const score = store.scores[own + set + 1]! + store.scores[theirs + set + 1]!;
        next.scores[set + 1] = score;
        isWorth = score + around[set]![cell]! + refunds[set]! > this.above + SAME;
      }
      if (!isWorth || !this.addCounts(block, other)) continue;
      next.scores[0] = store.scores[own]! + store.scores[theirs]!;
      next.kind = kind;
      next.tail = other;
      next.first = block;
      next.second = other;
      this.keep();
    }
    this.effort.spend(steps * (packed.words + sets));
  }

  private addCounts(block: number, other: number): boolean {
    const { store, next } = this;
    const { words, lift, guard } = this.packed;
    for (let word = 0; word < words; word++) {
      const sum = store.counts[block * words + word]! + store.counts[other * words + word]!;
      if (((sum + lift[word]!) & guard[word]!) !== 0) return false;
      next.counts[word] = sum;
    }
    return true;
  }

  private read(block: number): PatternTree {
    const { kind, first, second } = this.store;
    if (kind[block] === ITEM) return { kind: 'item', item: first[block]!, turned: second[block] === 1 };
    const [one, other] = [this.read(first[block]!), this.read(second[block]!)];
    return joinPieces(kind[block] === BESIDE, one, other) ?? one;
  }
}
