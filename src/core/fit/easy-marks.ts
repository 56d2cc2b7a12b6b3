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
import { forEachCombination, triesFor } from './symbol-tries';

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

interface Candidate extends Rating {
  readonly values: readonly number[];
  readonly excess: number;
}

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
  const limits = limitsOf(style, over);
  const found: Candidate[] = [];
  forEachCombination(holdIdle(lists, usual, forms), (values) => {
    if (limits.some((limit) => valueAt(limit, values) < 0)) return;
    const excess = excessOf(values);
    const rating = excess === null ? null : reader.rate(values);
    if (excess !== null && rating !== null) found.push({ ...rating, values: [...values], excess });
  });
  return keepBest(found, forms, question, memo).flatMap(({ candidate, paper }) => {
    const { values, roughness, settings, edges, excess } = candidate;
    const sizes = sizesAt(values);
    const blanks = blanksAt(forms, values);
    const net = layNet(style, { ...base, sizes });
    const asLaid = net.pieces.every(
      ({ blank }, i) => blank.across === blanks[i]?.across && blank.up === blanks[i]?.up,
    );
    const marks = reader.read(values);
    return asLaid
      ? [{ sizes, options, marks, blanks, roughness, settings, edges, excess, sheetsPerBox: paper }]
      : [];
  });
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
 * In order of roughness, then excess, a candidate stays if it needs less paper than every row before it with no more excess and handling.
 * Paper is counted only where it could still be less than that, and each blank once.
 */
function keepBest(found: Candidate[], forms: StyleForms, { paper, tool }: EasyMarkQuestion, memo: YieldMemo) {
  const kept: { readonly candidate: Candidate; readonly paper: number | null }[] = [];
  found.sort((a, b) => a.roughness - b.roughness || a.excess - b.excess || handlingOf(a) - handlingOf(b));
  for (const candidate of found) {
    const rivals = kept.filter(
      (row) => row.candidate.excess <= candidate.excess && handlingOf(row.candidate) <= handlingOf(candidate),
    );
    const blanks = blanksAt(forms, candidate.values);
    const least = leastSheetsPerBox(blanks, paper, memo) ?? NO_SHEET;
    if (rivals.some((row) => (row.paper ?? NO_SHEET) <= least)) continue;
    const sheets = sheetsPerBox(blanks, paper, tool, memo);
    if (rivals.every((row) => (sheets ?? NO_SHEET) < (row.paper ?? NO_SHEET)))
      kept.push({ candidate, paper: sheets });
  }
  return kept;
}

const blanksAt = ({ blanks }: StyleForms, values: readonly number[]) =>
  blanks.map(({ piece, across, up }) => ({
    piece,
    across: ticks(valueAt(across, values)),
    up: ticks(valueAt(up, values)),
  }));
