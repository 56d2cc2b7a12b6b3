import { type Block, besideBlocks, space, stackBlocks, textBlock } from './block';
import type { HandoutPhoto } from './handout-content';
import { TYPE_MM } from './print-document';

const BETWEEN_MM = 8;
const MOST_HIGH_MM = 100;

/** A photograph as large as its room holds, its name below. */
export function photoBlock(
  { name, jpeg, widthPx, heightPx }: HandoutPhoto,
  room: { readonly widthMm: number; readonly heightMm: number },
): Block {
  const scale = Math.min(room.widthMm / widthPx, room.heightMm / heightPx);
  const [widthMm, heightMm] = [widthPx * scale, heightPx * scale];
  const photo: Block = { heightMm, marks: [], photos: [{ at: [0, -heightMm], widthMm, heightMm, jpeg }] };
  return stackBlocks([
    photo,
    space(2),
    textBlock(name, { widthMm: room.widthMm, sizeMm: TYPE_MM.body }),
    space(5),
  ]);
}

/** Photographs two beside each other, in the order they were added. */
export function photoRows(photos: readonly HandoutPhoto[], widthMm: number): Block[] {
  const halfMm = (widthMm - BETWEEN_MM) / 2;
  const blocks = photos.map((photo) => photoBlock(photo, { widthMm: halfMm, heightMm: MOST_HIGH_MM }));
  return blocks.flatMap((block, at) => {
    if (at % 2 === 1) return [];
    const next = blocks[at + 1];
    return [next ? besideBlocks([0, block], [halfMm + BETWEEN_MM, next]) : block];
  });
}
