import type { PackedCounts } from './packed-counts';

/** How a block came about: one item, or two blocks side by side or one above the other. */
export const ITEM = 0;
export const BESIDE = 1;
export const ABOVE = 2;

/** A block about to be added. `scores` holds its worth at each set of discounts. */
export interface NewBlock {
  width: number;
  height: number;
  kind: number;
  /** Last block of the row or stack that it ends; for others itself (-1). */
  tail: number;
  /** Two blocks, or an item and whether it is turned. */
  first: number;
  second: number;
  readonly counts: Int32Array;
  readonly scores: Float64Array;
}

/**
 * Blocks of items in columns of typed arrays. Of blocks with the same content only those are kept that are not bigger both ways than
 * another; a block that is beaten later is marked.
 */
export class BlockStore {
  size = 0;
  width = new Int32Array(256);
  height = new Int32Array(256);
  kind = new Uint8Array(256);
  tail = new Int32Array(256);
  first = new Int32Array(256);
  second = new Int32Array(256);
  beaten = new Uint8Array(256);
  counts: Int32Array;
  scores: Float64Array;
  private sameContent = new Int32Array(256);
  private buckets = new Int32Array(1024).fill(-1);
  private readonly words: number;
  private readonly sets: number;

  constructor({ words }: PackedCounts, sets: number) {
    this.words = words;
    this.sets = sets;
    this.counts = new Int32Array(256 * words);
    this.scores = new Float64Array(256 * sets);
  }

  /** Adds a block unless one with the same content is no bigger; answers whether it was added. */
  add(block: NewBlock): boolean {
    const bucket = this.findBucket(block.counts);
    const head = this.buckets[bucket]!;
    for (let other = head; other >= 0; other = this.sameContent[other]!)
      if (this.width[other]! <= block.width && this.height[other]! <= block.height) return false;
    if (this.size === this.width.length) this.grow();
    const id = this.size++;
    this.width[id] = block.width;
    this.height[id] = block.height;
    this.kind[id] = block.kind;
    this.tail[id] = block.tail < 0 ? id : block.tail;
    this.first[id] = block.first;
    this.second[id] = block.second;
    this.counts.set(block.counts, id * this.words);
    this.scores.set(block.scores, id * this.sets);
    this.sameContent[id] = head;
    this.buckets[bucket] = id;
    for (let other = head; other >= 0; other = this.sameContent[other]!)
      if (this.width[other]! >= block.width && this.height[other]! >= block.height) this.beaten[other] = 1;
    if (this.size * 2 > this.buckets.length) this.rehash();
    return true;
  }

  private findBucket(counts: Int32Array): number {
    const wrap = this.buckets.length - 1;
    let bucket = hashCounts(counts, 0, this.words) & wrap;
    for (;;) {
      const head = this.buckets[bucket]!;
      if (head < 0 || this.hasCounts(head, counts)) return bucket;
      bucket = (bucket + 1) & wrap;
    }
  }

  private hasCounts(id: number, counts: Int32Array): boolean {
    for (let word = 0; word < this.words; word++)
      if (this.counts[id * this.words + word] !== counts[word]) return false;
    return true;
  }

  private rehash(): void {
    const heads = this.buckets.filter((head) => head >= 0);
    this.buckets = new Int32Array(this.buckets.length * 4).fill(-1);
    const wrap = this.buckets.length - 1;
    for (const head of heads) {
      let bucket = hashCounts(this.counts, head * this.words, this.words) & wrap;
      while (this.buckets[bucket]! >= 0) bucket = (bucket + 1) & wrap;
      this.buckets[bucket] = head;
    }
  }

  private grow(): void {
    const room = this.width.length * 2;
    this.width = widen(this.width, new Int32Array(room));
    this.height = widen(this.height, new Int32Array(room));
    this.tail = widen(this.tail, new Int32Array(room));
    this.first = widen(this.first, new Int32Array(room));
    this.second = widen(this.second, new Int32Array(room));
    this.sameContent = widen(this.sameContent, new Int32Array(room));
    this.kind = widen(this.kind, new Uint8Array(room));
    this.beaten = widen(this.beaten, new Uint8Array(room));
    this.counts = widen(this.counts, new Int32Array(room * this.words));
    this.scores = widen(this.scores, new Float64Array(room * this.sets));
  }
}

function widen<A extends Int32Array | Uint8Array | Float64Array>(old: A, room: A): A {
  room.set(old);
  return room;
}

function hashCounts(counts: Int32Array, from: number, words: number): number {
  let hash = 0;
  for (let word = 0; word < words; word++)
    hash = (Math.imul(hash ^ counts[from + word]!, 0x9e3779b1) + word) | 0;
  return hash ^ (hash >>> 15);
}
