import { CAP_HEIGHT, wrapText } from '../core/draw/strokes/letters';
import { lineMark, moveMarks, textMark } from '../core/draw/strokes/marks';
import type { Drawing, Mark } from '../core/draw/strokes/types';
import type { PlacedPhoto } from './print-document';

/** A piece of a page that is never torn apart. Its marks hang from its top left corner: x to the right, y up, so all y are negative. */
export interface Block {
  readonly heightMm: number;
  readonly marks: readonly Mark[];
  /** Photographs, placed as marks are. */
  readonly photos?: readonly PlacedPhoto[];
  /** Stays on the page of the block after it. */
  readonly keepsNext?: boolean;
}

/** From one baseline to the next, over the type size. */
export const LINE_HEIGHT = 1.42;

export interface TextStyle {
  readonly widthMm: number;
  readonly sizeMm: number;
  readonly bold?: boolean;
  readonly leftMm?: number;
  /** From one baseline to the next, over the type size; as usual if left out. */
  readonly leading?: number;
}

/** Words, broken into lines; the block starts at the capitals of the first and ends below the last. */
export function textBlock(
  text: string,
  { widthMm, sizeMm, bold = false, leftMm = 0, leading = LINE_HEIGHT }: TextStyle,
): Block {
  const lines = wrapText(text, widthMm, sizeMm, bold);
  const marks = lines.map((line, i) =>
    textMark(line, [leftMm, -CAP_HEIGHT * sizeMm - i * leading * sizeMm], sizeMm, { bold }),
  );
  return { heightMm: (CAP_HEIGHT + (lines.length - 1) * leading + 0.3) * sizeMm, marks };
}

export const space = (heightMm: number): Block => ({ heightMm, marks: [], keepsNext: true });

export const ruleBlock = (widthMm: number): Block => ({
  heightMm: 0,
  marks: [lineMark('guide', [[0, 0], [widthMm, 0]])], // biome-ignore format: one stroke
});

/** A drawing as it is, in the middle of a column. */
export const drawingBlock = (
  drawing: Pick<Drawing, 'widthMm' | 'heightMm' | 'marks'>,
  columnMm: number,
): Block => ({
  heightMm: drawing.heightMm,
  marks: moveMarks(drawing.marks, (columnMm - drawing.widthMm) / 2, -drawing.heightMm),
});

/** Blocks below one another, as one. */
export function stackBlocks(blocks: readonly Block[]): Block {
  let top = 0;
  const moved = blocks.map((block) => {
    const lower = movePrinted(block, 0, top);
    top -= block.heightMm;
    return lower;
  });
  return { heightMm: -top, ...together(moved) };
}

type Printed = Pick<Block, 'marks' | 'photos'>;

const movePrinted = ({ marks, photos = [] }: Printed, across: number, up: number): Printed => ({
  marks: moveMarks(marks, across, up),
  photos: photos.map((photo) => ({ ...photo, at: [photo.at[0] + across, photo.at[1] + up] })),
});

const together = (printed: readonly Printed[]): Printed => ({
  marks: printed.flatMap(({ marks }) => marks),
  photos: printed.flatMap(({ photos = [] }) => photos),
});

/** Blocks beside one another, tops level: each with how far from the left it stands. */
export const besideBlocks = (...placed: readonly (readonly [leftMm: number, block: Block])[]): Block => ({
  heightMm: Math.max(...placed.map(([, { heightMm }]) => heightMm)),
  ...together(placed.map(([leftMm, block]) => movePrinted(block, leftMm, 0))),
});

export const keepNext = (block: Block): Block => ({ ...block, keepsNext: true });

const PENCIL_LINE_MM = 9;

/** Lines to write on, as many as the height holds. */
export const pencilLines = (widthMm: number, heightMm: number): Block => ({
  heightMm,
  marks: Array.from({ length: Math.floor(heightMm / PENCIL_LINE_MM) }, (_, i) => {
    const y = -(i + 1) * PENCIL_LINE_MM;
    return lineMark('guide', [[0, y], [widthMm, y]]); // biome-ignore format: one stroke
  }),
});
