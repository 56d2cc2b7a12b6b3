import { layNet } from '../net';
import { everyChoice } from '../styles/define';
import type { BoxStyle, Chosen } from '../styles/types';
import { type Ruler, type Ticks, ticks } from '../units';
import type { CuttingTool, SheetPaper } from '../yield';
import { type CoordinateForm, markFormsOf, type StyleForms, valueAt } from './mark-forms';
import { limitsOf, overSymbols } from './over-symbols';
import { paretoBy } from './pareto';
import { markReader, type Rating, type ReadMark } from './rate-marks';
import { leastSheetsPerBox, sheetsPerBox, type YieldMemo } from './sheets-per-box';
import { combinationAt, forEachCombination, triesFor } from './symbol-tries';

export interface EasyMarkQuestion {
  readonly style: BoxStyle;
  readonly caliperUm: number;
  /** Inside room wanted: width, depth, height. */
  readonly need: readonly [Ticks, Ticks, Ticks];
  /** How much larger than needed a size may become. */
  readonly slack: Ticks;
  readonly ruler: Ruler;
  /** Farthest mark the tool has, from its fence. */
  readonly reach: Ticks;
  readonly held: Readonly<Record<string, Ticks>>;
  /** Held choices of construction; the others are tried all ways. */
  readonly heldOptions: Chosen;
  readonly paper: SheetPaper;
  readonly tool: CuttingTool;
}

/** One set of sizes that no other beats in all of: easy marks, little handling, little excess room, little paper. */
export interface EasyRow extends Rating {
  readonly sizes: Readonly<Record<string, Ticks>>;
  readonly options: Chosen;
  readonly marks: readonly ReadMark[];
  readonly blanks: readonly { readonly piece: string; readonly across: Ticks; readonly up: Ticks }[];
  /** Room beyond the need, as a share of the need. */
  readonly excess: number;
  /** Sheets for one box (1/2: two boxes a sheet); null where a piece does not fit the sheet. */
  readonly sheetsPerBox: number | null;
}

/**
 * The sizes whose marks are easiest on this ruler for the room asked: every combination `triesFor` names is tried, and the rows that nothing
 * beats in roughness, handling, excess and paper together are kept, easiest first. Exact within those tries.
 */
export function findEasyMarks(question: EasyMarkQuestion): EasyRow[] {
  const { style, heldOptions } = question;
  const choices = everyChoice(style).filter((chosen) =>
    Object.entries(heldOptions).every(([name, id]) => chosen[name] === id),
  );
  const memo: YieldMemo = new Map();
  const rows = choices.flatMap((options) => searchOne(question, options, memo));
  return paretoBy(rows, (row) => [
    row.roughness,
    handlingOf(row),
    row.excess,
    row.sheetsPerBox ?? NO_SHEET,
  ]).sort((a, b) => a.roughness - b.roughness || handlingOf(a) - handlingOf(b) || a.excess - b.excess);
}

const NO_SHEET = 1e9; // a blank that fits no sheet is worse than any that does
const handlingOf = ({ settings, edges }: Rating): number => settings + edges;

function searchOne(question: EasyMarkQuestion, options: Chosen, memo: YieldMemo): EasyRow[] {
  const { style, caliperUm, ruler } = question;
  const symbols = Object.keys(style.symbols);
  const { lists, usual } = triesFor(question);
  const sizesAt = (values: readonly number[]) =>
    Object.fromEntries(symbols.map((name, i) => [name, ticks(values[i] ?? 0)]));
  const base = { sizes: sizesAt(lists.map((list) => list[0] ?? 0)), caliperUm, options, mark: ruler.finest };
  const forms = markFormsOf(style, base, symbols);
  const over = overSymbols(style, base);
  const reader = markReader(forms.marks, ruler, question.reach);
  const excessOf = excessRater(question.need, style.inside.map(over));
  const limits = limitsOf(style, options, over);
  const found: Found = { combination: [], roughness: [], handling: [], excess: [] };
  const tried = holdIdle(lists, usual, forms);
  forEachCombination(tried, (values, combination) => {
    if (limits.some((limit) => valueAt(limit, values) < 0)) return;
    const excess = excessOf(values);
    const rating = excess === null ? null : reader.rate(values);
    if (excess === null || rating === null) return;
    found.combination.push(combination);
    found.roughness.push(rating.roughness);
    found.handling.push(handlingOf(rating));
    found.excess.push(excess);
  });
  return keepBest(found, (i) => blanksAt(forms, combinationAt(tried, i)), question, memo).flatMap(
    ({ combination, excess, paper }) => {
      const values = combinationAt(tried, combination);
      const sizes = sizesAt(values);
      const blanks = blanksAt(forms, values);
      const rating = reader.rate(values);
      const net = layNet(style, { ...base, sizes });
      const asLaid = net.pieces.every(
        ({ blank: { across, up } }, i) =>
          blanks[i] !== undefined && blanks[i].across === across && blanks[i].up === up,
      );
      if (rating === null || !asLaid) return [];
      return [{ sizes, options, marks: reader.read(values), blanks, ...rating, excess, sheetsPerBox: paper }];
    },
  );
}

/** Combinations that give the room on legal marks, column by column: thousands, so no object each. */
interface Found {
  readonly combination: number[];
  readonly roughness: number[];
  readonly handling: number[];
  readonly excess: number[];
}

interface Kept {
  readonly combination: number;
  readonly handling: number;
  readonly excess: number;
  readonly paper: number | null;
}

/** A symbol that moves no mark and no blank keeps to its usual. */
const holdIdle = (
  lists: readonly (readonly Ticks[])[],
  usual: readonly Ticks[],
  { marks, blanks }: StyleForms,
) =>
  lists.map((list, i): readonly Ticks[] => {
    const forms = [...marks.map(({ at }) => at), ...blanks.flatMap(({ across, up }) => [across, up])];
    return forms.some(({ times }) => times[i] !== 0) ? list : usual.slice(i, i + 1);
  });

/** Room beyond the need as a share of it; null where the need is not met. */
function excessRater(
  need: readonly Ticks[],
  inside: readonly CoordinateForm[],
): (values: readonly number[]) => number | null {
  return (values) => {
    let room = 1;
    for (const [axis, form] of inside.entries()) {
      const wanted = Math.max(1, need[axis] ?? 0);
      const has = valueAt(form, values);
      if (has < wanted) return null;
      room *= has / wanted;
    }
    return room - 1;
  };
}

/**
 * In order of roughness, then excess, a combination stays if it needs less paper than every row before it with no more excess and handling.
 * Paper is counted only where it could still be less than that, and each blank once.
 */
function keepBest(
  { combination, roughness, handling, excess }: Found,
  blanksOf: (combination: number) => ReturnType<typeof blanksAt>,
  { paper, tool }: EasyMarkQuestion,
  memo: YieldMemo,
): Kept[] {
  const kept: Kept[] = [];
  const order = combination
    .map((_, i) => i)
    .sort((a, b) => at(roughness, a) - at(roughness, b) || at(excess, a) - at(excess, b));
  for (const i of order) {
    const rival = leastPaperOf(kept, at(excess, i), at(handling, i));
    const blanks = blanksOf(at(combination, i));
    if (rival <= (leastSheetsPerBox(blanks, paper, memo) ?? NO_SHEET)) continue;
    const sheets = sheetsPerBox(blanks, paper, tool, memo);
    if ((sheets ?? NO_SHEET) < rival)
      kept.push({
        combination: at(combination, i),
        handling: at(handling, i),
        excess: at(excess, i),
        paper: sheets,
      });
  }
  return kept;
}

/** The least paper among rows with no more excess and handling; infinite where there is none. */
function leastPaperOf(kept: readonly Kept[], excess: number, handling: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const row of kept)
    if (row.excess <= excess && row.handling <= handling) least = Math.min(least, row.paper ?? NO_SHEET);
  return least;
}

const at = (column: readonly number[], i: number): number => column[i] ?? 0;

const blanksAt = ({ blanks }: StyleForms, values: readonly number[]) =>
  blanks.map(({ piece, across, up }) => ({
    piece,
    across: ticks(valueAt(across, values)),
    up: ticks(valueAt(up, values)),
  }));
