import type { Ticks } from '../units';
import { ticks } from '../units';
import { countOnSheet, type SheetPaper } from '../yield';
import { type EasyMarkQuestion, type EasyRow, findEasyMarks } from './easy-marks';

/** A way out where no size fits the sheet. */
export type WayOut =
  | { readonly kind: 'sheet'; readonly paperId: string }
  | { readonly kind: 'turned'; readonly need: readonly [Ticks, Ticks, Ticks] }
  /** The piece made as two halves with one more tab, each on a sheet of its own. */
  | { readonly kind: 'two-piece'; readonly piece: string; readonly across: Ticks; readonly up: Ticks };

/**
 * What would fit where nothing does: the smallest other sheet that takes the box, the thing turned another way, or a body of two halves.
 * Each is tried, none guessed; sizes as small as the need allows. Rows are those found for the sheet that is too small.
 */
export function whatWouldFit(
  question: EasyMarkQuestion,
  rows: readonly EasyRow[],
  others: readonly SheetPaper[],
): WayOut[] {
  const fits = (asked: EasyMarkQuestion) =>
    findEasyMarks(asked).some(({ sheetsPerBox }) => sheetsPerBox !== null);
  const ways: WayOut[] = [];
  const bySize = [...others].sort((a, b) => a.across * a.up - b.across * b.up);
  const sheet = bySize.find((paper) => fits({ ...question, paper }));
  if (sheet) ways.push({ kind: 'sheet', paperId: sheet.id });
  const need = turnsOf(question.need).find((turned) => fits({ ...question, need: turned }));
  if (need) ways.push({ kind: 'turned', need });
  const half = twoPieces(question, rows[0]);
  if (half) ways.push(half);
  return ways;
}

type Need = readonly [Ticks, Ticks, Ticks];

/** The five other ways round, each once. */
function turnsOf([w, d, h]: Need): Need[] {
  const all: Need[] = [
    [d, w, h],
    [w, h, d],
    [h, w, d],
    [d, h, w],
    [h, d, w],
  ];
  const seen = new Set([`${w} ${d} ${h}`]);
  return all.filter((need) => {
    const key = need.join(' ');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Half the length round and one tab more: only where the style has a tab, and one piece is too long. */
function twoPieces({ paper, tool }: EasyMarkQuestion, row: EasyRow | undefined): WayOut | null {
  const tab = row?.sizes['tab'];
  if (row === undefined || tab === undefined) return null;
  for (const { piece, across, up } of row.blanks) {
    const count = (length: Ticks) =>
      countOnSheet({ id: piece, across: length, up, grain: 'free' }, paper, tool).count;
    if (count(across) > 0) continue;
    const half = ticks(Math.ceil((across - tab) / 2) + tab);
    if (count(half) > 0) return { kind: 'two-piece', piece, across: half, up };
  }
  return null;
}
