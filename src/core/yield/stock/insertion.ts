import { joinPieces, type Pattern, type PatternTree, patternOf } from '../pattern/pattern';
import { type CuttingProblem, type Lie, liesOf, reachOf } from '../problem/cutting-problem';
import type { Effort } from './effort';
import type { PatternUse } from './pattern-plan';

/** A piece of card: still free, cut in two, or an item. */
interface Piece {
  width: number;
  height: number;
  lie: Lie | null;
  cut: { readonly upright: boolean; readonly first: Piece; readonly second: Piece } | null;
}

/** Where an item goes: a free piece, how it lies there, and which cut comes first. */
interface Place {
  readonly piece: Piece;
  readonly lie: Lie;
  readonly uprightFirst: boolean;
}

const MOST_PIECES = 400; // Beyond this many the mixtures do as well, sooner. source: our own, measured
const SWAY = 0.35; // How far chance moves an item in the order, as a share of its size. source: our own, measured
const SQUEAK = 1.15; // How much earlier what came last goes the next time. source: our own, measured

/**
 * Plans by putting one item after another into the free piece it fills best, each time with an edge-to-edge cut; then again in another order,
 * where what ended on the last sheet comes earlier. Good where sheets are few and sizes many. Source: guillotine insertion, Jylänki, "A
 * thousand ways to pack the bin" (2010); squeaky wheel, Joslin & Clements, JAIR 10 (1999) 353-373 (from memory). A way to find plans, no proof.
 */
export class Insertion {
  private readonly problem: CuttingProblem;
  private readonly lies: readonly (readonly Lie[])[];
  private readonly copies: readonly number[];
  private readonly weights: number[];
  private readonly sway: () => number;
  private readonly reach: number;
  /** Free turns, and few enough items for it to be worth while. */
  readonly applies: boolean;

  constructor(problem: CuttingProblem, sway: () => number) {
    this.problem = problem;
    this.sway = sway;
    this.reach = reachOf(problem);
    const lies = liesOf(problem);
    this.lies = problem.items.map((_, item) => lies.filter((lie) => lie.item === item));
    const total = problem.items.reduce((sum, { demand }) => sum + demand, 0);
    this.applies = problem.stages === 'free' && total <= MOST_PIECES;
    this.copies = this.applies
      ? problem.items.flatMap(({ demand }, item) => new Array<number>(demand).fill(item))
      : [];
    this.weights = this.copies.map((item) => {
      const { width, height } = problem.items[item]!;
      return width * height + (problem.width + problem.height) * Math.max(width, height) * 0.1;
    });
  }

  /** A plan on at most `most` sheets, or null: this time it did not come out. */
  tryOnce(most: number, effort: Effort): PatternUse[] | null {
    const order = this.copies
      .map((_, at) => ({ at, rank: this.weights[at]! * (1 + SWAY * (2 * this.sway() - 1)) }))
      .sort((a, b) => b.rank - a.rank);
    const sheets: Piece[] = [];
    const free: Piece[] = [];
    let failed = false;
    const preferUpright = this.sway();
    for (const { at } of order) {
      const item = this.copies[at]!;
      let place = this.bestPlace(free, item, preferUpright);
      effort.spend(free.length * 4 + 8);
      if (place === null && sheets.length < most) {
        const sheet = this.freePiece(this.problem.width, this.problem.height);
        sheets.push(sheet);
        free.push(sheet);
        place = this.bestPlace([sheet], item, preferUpright);
      }
      if (place === null) {
        this.weights[at] = this.weights[at]! * SQUEAK;
        failed = true;
      } else this.put(place, free);
    }
    return failed ? null : this.usesOf(sheets);
  }

  private freePiece = (width: number, height: number): Piece => ({ width, height, lie: null, cut: null });

  /** The free piece in which least is left along the nearer side; cuts no longer than the tool's reach. */
  private bestPlace(free: readonly Piece[], item: number, preferUpright: number): Place | null {
    let best: Place | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (const piece of free)
      for (const lie of this.lies[item]!) {
        const [over, above] = [piece.width - lie.width, piece.height - lie.height];
        if (over < 0 || above < 0) continue;
        const left = Math.min(over, above) + 1e-3 * Math.max(over, above);
        if (left >= least) continue;
        const { reach } = this;
        const upright = (over === 0 || piece.height <= reach) && (above === 0 || lie.width <= reach);
        const level = (above === 0 || piece.width <= reach) && (over === 0 || lie.height <= reach);
        if (!upright && !level) continue;
        least = left;
        // The first cut leaves the larger whole piece of what is over; now and then chance turns it.
        const wanted = over * piece.height > above * piece.width !== this.sway() < 0.1 * preferUpright;
        best = { piece, lie, uprightFirst: upright && (wanted || !level) };
      }
    return best;
  }

  private put({ piece, lie, uprightFirst }: Place, free: Piece[]): void {
    free.splice(free.indexOf(piece), 1);
    const cutOff = (from: Piece, upright: boolean): Piece => {
      const size = upright ? lie.width : lie.height;
      const over = (upright ? from.width : from.height) - size;
      if (over === 0) return from;
      const first = upright ? this.freePiece(size, from.height) : this.freePiece(from.width, size);
      const second = upright ? this.freePiece(over, from.height) : this.freePiece(from.width, over);
      from.cut = { upright, first, second };
      free.push(second);
      return first;
    };
    cutOff(cutOff(piece, uprightFirst), !uprightFirst).lie = lie;
  }

  private usesOf(sheets: readonly Piece[]): PatternUse[] {
    const items = this.problem.items.length;
    const byContent = new Map<string, { readonly pattern: Pattern; sheets: number }>();
    for (const sheet of sheets) {
      const pattern = patternOf(treeOf(sheet), items);
      const key = pattern.counts.join();
      const known = byContent.get(key);
      if (known) known.sheets++;
      else byContent.set(key, { pattern, sheets: 1 });
    }
    return [...byContent.values()];
  }
}

function treeOf({ lie, cut }: Piece): PatternTree | null {
  if (lie !== null) return { kind: 'item', item: lie.item, turned: lie.turned };
  return cut === null ? null : joinPieces(cut.upright, treeOf(cut.first), treeOf(cut.second));
}
