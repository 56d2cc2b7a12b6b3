import type { Box } from '../core/plane';

/** Pages that together show a drawing at true size. Frame: the drawing's own, mm, y up. */
export interface Tiling {
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the top, each from the left. */
  readonly tiles: readonly Tile[];
}

export interface Tile {
  /** `A1`: row A is the top one, column 1 the left one. */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** What of the drawing this page shows. */
  readonly window: Box;
}

/** How far neighboring pages show the same strip. source: common practice of tiled patterns, no source. */
export const OVERLAP_MM = 10;

/** A drawing cut into as few windows of one size as cover it, neighbors overlapping; the drawing stands in the middle of them. */
export function tileDrawing(
  widthMm: number,
  heightMm: number,
  window: { readonly widthMm: number; readonly heightMm: number },
): Tiling {
  const columns = countTiles(widthMm, window.widthMm);
  const rows = countTiles(heightMm, window.heightMm);
  const left = (widthMm - spanOf(columns, window.widthMm)) / 2;
  const top = heightMm + (spanOf(rows, window.heightMm) - heightMm) / 2;
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const x = left + column * (window.widthMm - OVERLAP_MM);
    const y = top - row * (window.heightMm - OVERLAP_MM);
    return {
      name: `${String.fromCharCode(65 + row)}${column + 1}`,
      row,
      column,
      window: { left: x, right: x + window.widthMm, bottom: y - window.heightMm, top: y },
    };
  });
  return { columns, rows, tiles };
}

const countTiles = (sizeMm: number, windowMm: number) =>
  Math.max(1, Math.ceil((sizeMm - OVERLAP_MM) / (windowMm - OVERLAP_MM) - 1e-9));

const spanOf = (count: number, windowMm: number) => count * (windowMm - OVERLAP_MM) + OVERLAP_MM;
