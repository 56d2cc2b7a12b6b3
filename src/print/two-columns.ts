import { moveMarks } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import type { Block } from './block';
import type { PageColumn } from './page-flow';

const GAP_MM = 6; // between the two columns

/** Fills pages from the top: blocks across the whole width, and runs of blocks in two columns of like height. */
export class TwoColumns {
  readonly columnMm: number;
  readonly widthMm: number;
  readonly #heightMm: number;
  readonly #pages: Mark[][] = [[]];
  #top = 0;

  constructor({ widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }) {
    this.widthMm = widthMm;
    this.columnMm = (widthMm - GAP_MM) / 2;
    this.#heightMm = heightMm;
  }

  /** A block across the page; on the next page if it and `below` more do not fit on this one. */
  acrossWith(block: Block, below: number): void {
    if (this.#top > 0 && this.#top + block.heightMm + below > this.#heightMm) this.#turn();
    this.#place(block, 0, this.#top);
    this.#top += block.heightMm;
  }

  /** A block across the page, left out where it would take another page; whether it is there. */
  ifRoom(block: Block): boolean {
    const isRoom = this.#top + block.heightMm <= this.#heightMm;
    if (isRoom) this.acrossWith(block, 0);
    return isRoom;
  }

  /** Blocks down the left column, then the right. What does not fit goes on on the next page. */
  inColumns(blocks: readonly Block[]): void {
    let rest = blocks;
    while (rest.length > 0) {
      const room = this.#heightMm - this.#top;
      const [left, right] = balanced(rest, room);
      if (left === 0 && this.#top > 0) {
        this.#turn();
        continue;
      }
      const first = Math.max(1, left);
      const columns = [rest.slice(0, first), rest.slice(first, first + right)];
      columns.forEach((column, i) => {
        let top = this.#top;
        for (const block of column) {
          this.#place(block, i * (this.columnMm + GAP_MM), top);
          top += block.heightMm;
        }
      });
      this.#top += Math.max(...columns.map(heightOf));
      rest = rest.slice(first + right);
      if (rest.length > 0) this.#turn();
    }
  }

  pages(): PageColumn[] {
    return this.#pages.map((marks) => ({ marks }));
  }

  #turn(): void {
    this.#pages.push([]);
    this.#top = 0;
  }

  #place(block: Block, left: number, top: number): void {
    this.#pages.at(-1)?.push(...moveMarks(block.marks, left, -top));
  }
}

export const heightOf = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, { heightMm }) => sum + heightMm, 0);

/** How many blocks stand in the left column and in the right: all of them in the least height, or as many as the room holds. */
function balanced(blocks: readonly Block[], room: number): readonly [left: number, right: number] {
  const fits = (from: number): number => {
    let [count, height] = [0, 0];
    for (const block of blocks.slice(from)) {
      height += block.heightMm;
      if (height > room) break;
      count++;
    }
    return count;
  };
  const most = fits(0);
  if (most + fits(most) < blocks.length) return [most, fits(most)];
  const tallest = (left: number): number =>
    Math.max(heightOf(blocks.slice(0, left)), heightOf(blocks.slice(left)));
  let best = most;
  for (let left = most; left > 0; left--) if (tallest(left) <= tallest(best)) best = left;
  return [best, blocks.length - best];
}
