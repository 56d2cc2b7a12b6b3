import { CAP_HEIGHT, wrapText } from '../core/draw/strokes/letters';
import { lineMark, textMark } from '../core/draw/strokes/marks';
import { type Block, keepNext, LINE_HEIGHT } from './block';
import { TYPE_MM } from './print-document';

export interface TableColumn {
  readonly head: string;
  readonly widthMm: number;
  readonly align?: 'start' | 'end';
  readonly bold?: boolean;
}

const GAP_MM = 3; // between columns
const ROW_PAD_MM = 1.9;

/** A table as blocks, one a row, so that it breaks between pages and never inside a row. Head rows stay with the first row. */
export function tableBlocks(
  columns: readonly TableColumn[],
  rows: readonly (readonly string[])[],
  sizeMm: number = TYPE_MM.body,
): Block[] {
  const head = rowBlock(
    columns,
    columns.map((column) => column.head),
    TYPE_MM.small,
    false,
  );
  return [keepNext(head), ...rows.map((row) => rowBlock(columns, row, sizeMm, true))];
}

function rowBlock(
  columns: readonly TableColumn[],
  cells: readonly string[],
  sizeMm: number,
  isBody: boolean,
): Block {
  let left = 0;
  const placed = columns.map((column, i) => {
    const bold = isBody && (column.bold ?? false);
    const lines = wrapText(cells[i] ?? '', column.widthMm - GAP_MM, sizeMm, bold);
    const at = column.align === 'end' ? left + column.widthMm - GAP_MM : left;
    left += column.widthMm;
    return { lines, at, bold, anchor: column.align ?? ('start' as const) };
  });
  const count = Math.max(...placed.map(({ lines }) => lines.length));
  const heightMm = 2 * ROW_PAD_MM + (CAP_HEIGHT + (count - 1) * LINE_HEIGHT) * sizeMm;
  const texts = placed.flatMap(({ lines, at, bold, anchor }) =>
    lines.map((line, i) =>
      textMark(line, [at, -ROW_PAD_MM - (CAP_HEIGHT + i * LINE_HEIGHT) * sizeMm], sizeMm, { anchor, bold }),
    ),
  );
  const rule = lineMark('guide', [[0, -heightMm], [left - GAP_MM, -heightMm]]); // biome-ignore format: one stroke
  return { heightMm, marks: [...texts, rule] };
}
