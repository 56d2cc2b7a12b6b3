import type { Ticks } from '../units';
import { type CuttingTool, countOnSheet, type SheetPaper, sheetsEach } from '../yield';

interface PieceBlank {
  readonly piece: string;
  readonly across: Ticks;
  readonly up: Ticks;
}

/** Pieces a sheet, remembered by blank (longer side first), so that thousands of sizes ask for each blank once. */
export type YieldMemo = Map<
  string,
  { readonly long: number; readonly short: number; readonly count: number }
>;

/** `sheetsEach` of these blanks, each counted once. */
export function sheetsPerBox(
  blanks: readonly PieceBlank[],
  paper: SheetPaper,
  tool: CuttingTool,
  memo: YieldMemo,
): number | null {
  return sheetsEach(blanks, (blank) => {
    const [long, short] = longAndShort(blank);
    const key = `${long} ${short}`;
    const known = memo.get(key);
    if (known !== undefined) return known.count;
    const { count } = countOnSheet(
      { id: blank.piece, across: blank.across, up: blank.up, grain: 'free' },
      paper,
      tool,
    );
    memo.set(key, { long, short, count });
    return count;
  });
}

/** No fewer sheets than this, without counting: from the sheet's area, and from remembered blanks that are no larger. Null as above. */
export function leastSheetsPerBox(
  blanks: readonly PieceBlank[],
  paper: SheetPaper,
  memo: YieldMemo,
): number | null {
  return sheetsEach(blanks, (blank) => {
    const [long, short] = longAndShort(blank);
    let most = Math.floor((paper.across * paper.up) / (long * short));
    for (const known of memo.values())
      if (known.long <= long && known.short <= short) most = Math.min(most, known.count);
    return most;
  });
}

const longAndShort = ({ across, up }: PieceBlank): [number, number] => [
  Math.max(across, up),
  Math.min(across, up),
];
