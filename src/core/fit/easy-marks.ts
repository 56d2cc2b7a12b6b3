import { type BoxNet, layNet } from '../net';
import { cornersOfNet } from '../net/lay-net';
import { everyChoice } from '../styles/language/define';
import type { BoxStyle, Chosen, ConstraintSpec } from '../styles/language/types';
import { type Ticks, ticks } from '../units';
import type { CuttingTool, SheetPaper } from '../yield';
import { type CoordinateForm, markFormsOf, type StyleForms } from './mark-forms';
import { insideForms, limitsOf, overSymbols, roomBends } from './over-symbols';
import { blanksAt, type Kept, keepBest, NO_SHEET } from './pair-groups';
import { paretoBy } from './pareto';
import { type MarkTool, markReader, type Rating, type ReadMark } from './rate-marks';
import { sheetsPerBox, type YieldMemo } from './sheets-per-box';
import { groupSizes } from './size-groups';
import { triesFor } from './symbol-tries';

export interface EasyMarkQuestion extends MarkTool {
  readonly style: BoxStyle;
  readonly caliperUm: number;
  /** Inside room wanted: width, depth, height. */
  readonly need: readonly [Ticks, Ticks, Ticks];
  /** How much larger than needed a size may become. */
  readonly slack: Ticks;
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
  /** Lines that no ruler sets: their place bends with a size, so they are cut by template. */
  readonly byTemplate: number;
  readonly blanks: readonly { readonly piece: string; readonly across: Ticks; readonly up: Ticks }[];
  /** Room there is: width, depth, height. */
  readonly inside: readonly [Ticks, Ticks, Ticks];
  /** Room beyond the need, as a share of the need. */
  readonly excess: number;
  /** Sheets for one box (1/2: two boxes a sheet); null where a piece does not fit the sheet. */
  readonly sheetsPerBox: number | null;
}

/** A row with the numbers that rank it; it is laid when asked for. */
export interface EasyCandidate
  extends Pick<EasyRow, 'roughness' | 'byTemplate' | 'blanks' | 'excess' | 'sheetsPerBox'> {
  /** Settings and edges of the fence together. */
  readonly handling: number;
  /** None where it does not stand as its forms say. */
  readonly lay: () => LaidRow | null;
}

interface LaidRow {
  readonly row: EasyRow;
  readonly net: BoxNet;
}

/**
 * The sizes whose marks are easiest on this tool for the room asked: every combination `triesFor` names is tried, and the rows that nothing
 * beats in roughness, handling, excess and paper together are kept, easiest first; rows larger than the sheet only where none fits it. Exact
 * within those tries.
 */
export function findEasyMarks(question: EasyMarkQuestion): EasyRow[] {
  const memo: YieldMemo = new Map();
  return easiestFirst(layKept(keepEasy(question, memo), question, memo)).map(({ row }) => row);
}

/** The rows of `findEasyMarks`, for whoever looks at few of them. Where a style bends the corners of all are laid at once, since some may fall. `memo`: blanks counted on this paper and tool. */
export function easyCandidates(question: EasyMarkQuestion, memo: YieldMemo): EasyCandidate[] {
  const kept = keepEasy(question, memo);
  if (kept.some(({ search }) => search.bends)) return easiestFirst(layKept(kept, question, memo));
  return easiestFirst(
    kept.map((row) => ({
      ...row,
      byTemplate: row.search.forms.byTemplate,
      blanks: blanksAt(row.search.forms, row.values),
      sheetsPerBox: row.paper === NO_SHEET ? null : row.paper,
      lay: () => layRow(row, question, memo)?.lay() ?? null,
    })),
  );
}

function keepEasy(question: EasyMarkQuestion, memo: YieldMemo): Kept[] {
  const choices = everyChoice(question.style).filter((chosen) =>
    Object.entries(question.heldOptions).every(([name, id]) => chosen[name] === id),
  );
  let found: Kept[] = [];
  for (const advised of adviceOf(question.style)) {
    found = [];
    for (const options of choices) searchOne({ ...question, options, advised }, found, memo);
    if (found.some(({ paper }) => paper !== NO_SHEET)) break;
  }
  return found;
}

/** Which advice of a style is kept, first all of it, and less only where nothing is found: what flaps, tabs and eases can give costs no room. */
function adviceOf({ constraints, symbols }: BoxStyle): readonly OneSearch['advised'][] {
  const notes = constraints.filter(({ severity }) => severity === 'note');
  const isAllowance = ({ symbol }: ConstraintSpec): boolean => symbols[symbol]?.role === 'allowance';
  return [
    () => true,
    ...(notes.some(isAllowance) && !notes.every(isAllowance) ? [isAllowance] : []),
    ...(notes.length > 0 ? [() => false] : []),
  ];
}

/** Only rows that stand when laid are shown. Where a style bends, a row may fall and let in what it beat: then all are laid. */
function layKept(kept: readonly Kept[], question: EasyMarkQuestion, memo: YieldMemo) {
  const layAll = (rows: readonly Kept[]) =>
    rows.flatMap((one) => {
      const laid = layRow(one, question, memo);
      if (laid === null) return [];
      const { row } = laid;
      return [{ ...row, row, handling: row.settings + row.edges, lay: laid.lay }];
    });
  const best = paretoBy(kept, ({ roughness, handling, excess, paper }) => [
    roughness,
    handling,
    excess,
    paper,
  ]);
  const laid = layAll(best);
  return laid.length === best.length ? laid : layAll(kept);
}

const easiestFirst = <Row extends EasyCandidate>(rows: readonly Row[]): Row[] =>
  onSheet(
    paretoBy(rows, (row) => [row.roughness, row.handling, row.excess, row.sheetsPerBox ?? NO_SHEET]),
  ).sort((a, b) => a.roughness - b.roughness || a.handling - b.handling || a.excess - b.excess);

function onSheet<Row extends EasyCandidate>(rows: Row[]): Row[] {
  const fitting = rows.filter(({ sheetsPerBox }) => sheetsPerBox !== null);
  return fitting.length > 0 ? fitting : rows;
}

/** One way of construction, with or without the sizes that a style only advises against. */
interface OneSearch extends EasyMarkQuestion {
  readonly options: Chosen;
  readonly advised: (bound: ConstraintSpec) => boolean;
}

function searchOne(question: OneSearch, kept: Kept[], memo: YieldMemo): void {
  const { style, need, options, advised } = question;
  const symbols = Object.keys(style.symbols);
  const { lists, usual } = triesFor(question);
  const base = sizingOf(
    question,
    options,
    Object.fromEntries(symbols.map((name, i) => [name, lists[i]?.[0] ?? ticks(0)])),
  );
  const varied = lists.map((list) => list.length > 1);
  const forms = markFormsOf(style, base, symbols, varied);
  const tried = holdIdle(lists, usual, forms);
  const limits = limitsOf(style, options, overSymbols(style, base), advised).filter((limit) =>
    canBreak(limit, tried),
  );
  const inside = insideForms(style, base);
  const bends = forms.byTemplate > 0 || roomBends(style) || blanksBend(question, options, tried, forms);
  const wanted = need.map((side) => Math.max(1, side));
  const { across, up } = question.paper;
  const judging = { wanted, limits: limits.length, sheet: across * up };
  for (const groups of groupSizes(tried, forms, { inside, need: wanted, limits }, question))
    keepBest(groups, judging, { options, forms, bends }, question, kept, memo);
}

/** Whether the blanks at the largest sizes tried are not what their forms say: a length that is rounded to marks grows in steps. */
function blanksBend(
  question: EasyMarkQuestion,
  options: Chosen,
  tried: readonly (readonly Ticks[])[],
  forms: StyleForms,
): boolean {
  const largest = tried.map((list) => ticks(Math.max(...list)));
  const sizes = sizesNamed(question.style, largest);
  const laid = cornersOfNet(question.style, sizingOf(question, options, sizes)).pieces;
  return blanksAt(forms, largest).some(
    ({ across, up }, i) => across !== laid[i]?.blank.across || up !== laid[i].blank.up,
  );
}

const sizesNamed = (style: BoxStyle, values: readonly number[]): Readonly<Record<string, Ticks>> =>
  Object.fromEntries(Object.keys(style.symbols).map((name, i) => [name, ticks(values[i] ?? 0)]));

const sizingOf = (
  { caliperUm, ruler }: EasyMarkQuestion,
  options: Chosen,
  sizes: Readonly<Record<string, Ticks>>,
) => ({ sizes, caliperUm, options, mark: ruler.finest });

/** Whether some combination takes the form below nothing; the others need not be asked again and again. */
const canBreak = ({ constant, times }: CoordinateForm, lists: readonly (readonly Ticks[])[]): boolean =>
  times.reduce((sum, n, i) => sum + Math.min(...(lists[i] ?? []).map((value) => n * value)), constant) < -0.5;

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

/** The row as it is when laid; none where its straight marks do not read as the forms said, or the room falls short. Its net is laid when asked for. */
function layRow({ search, values, paper }: Kept, question: EasyMarkQuestion, memo: YieldMemo) {
  const { style, need } = question;
  const { forms, options } = search;
  const sizing = sizingOf(question, options, sizesNamed(style, values));
  const corners = cornersOfNet(style, sizing);
  const blanks = forms.blanks.map(({ piece }, i) => {
    const { across, up } = corners.pieces[i]?.blank ?? { across: ticks(0), up: ticks(0) };
    return { piece, across, up };
  });
  const asLaid = blanksAt(forms, values).every(
    ({ across, up }, i) => across === blanks[i]?.across && up === blanks[i].up,
  );
  const inside = [corners.inside.width, corners.inside.depth, corners.inside.height] as const;
  const reader = markReader(forms.marks, question);
  const rating = reader.rate(values);
  if (rating === null || inside.some((side, axis) => side < (need[axis] ?? 0))) return null;
  if (!asLaid && forms.byTemplate === 0) return null;
  const sheets = asLaid ? paper : (sheetsPerBox(blanks, question.paper, question.tool, memo) ?? NO_SHEET);
  const row: EasyRow = {
    sizes: sizing.sizes,
    options,
    marks: reader.read(values),
    byTemplate: forms.byTemplate,
    blanks,
    inside,
    roughness: rating.roughness,
    settings: rating.settings.length,
    edges: rating.edges,
    excess: inside.reduce((room, side, axis) => room * (side / Math.max(1, need[axis] ?? 0)), 1) - 1,
    sheetsPerBox: sheets === NO_SHEET ? null : sheets,
  };
  return { row, lay: (): LaidRow => ({ row, net: layNet(style, sizing) }) };
}
