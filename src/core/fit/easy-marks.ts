import { layNet } from '../net';
import { everyChoice } from '../styles/define';
import type { BoxStyle, Chosen } from '../styles/types';
import { type Ticks, ticks } from '../units';
import type { CuttingTool, SheetPaper } from '../yield';
import { type CoordinateForm, markFormsOf, type StyleForms, valueAt } from './mark-forms';
import { insideForms, limitsOf, overSymbols } from './over-symbols';
import { paretoBy } from './pareto';
import {
  joinRatings,
  type MarkTool,
  markReader,
  type PartRating,
  type Rating,
  type ReadMark,
} from './rate-marks';
import { leastSheetsPerBox, sheetsPerBox, type YieldMemo } from './sheets-per-box';
import { type GroupedSearch, groupSizes, joinValues } from './size-groups';
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

/**
 * The sizes whose marks are easiest on this tool for the room asked: every combination `triesFor` names is tried, and the rows that nothing
 * beats in roughness, handling, excess and paper together are kept, easiest first; rows larger than the sheet only where none fits it. Exact
 * within those tries.
 */
export function findEasyMarks(question: EasyMarkQuestion): EasyRow[] {
  const { style, heldOptions } = question;
  const choices = everyChoice(style).filter((chosen) =>
    Object.entries(heldOptions).every(([name, id]) => chosen[name] === id),
  );
  const kept: Kept[] = [];
  const memo: YieldMemo = new Map();
  for (const options of choices) searchOne(question, options, kept, memo);
  return easiestFirst(layKept(kept, question, memo));
}

/** Only rows that stand when laid are shown. Where a style bends, a row may fall and let in what it beat: then all are laid. */
function layKept(kept: readonly Kept[], question: EasyMarkQuestion, memo: YieldMemo): EasyRow[] {
  const best = paretoBy(kept, scoresOf);
  const laid = best.flatMap((row) => layRow(row, question, memo));
  return laid.length === best.length ? laid : kept.flatMap((row) => layRow(row, question, memo));
}

const easiestFirst = (rows: readonly EasyRow[]): EasyRow[] =>
  onSheet(
    paretoBy(rows, (row) => [row.roughness, handlingOf(row), row.excess, row.sheetsPerBox ?? NO_SHEET]),
  ).sort((a, b) => a.roughness - b.roughness || handlingOf(a) - handlingOf(b) || a.excess - b.excess);

function onSheet(rows: EasyRow[]): EasyRow[] {
  const fitting = rows.filter(({ sheetsPerBox }) => sheetsPerBox !== null);
  return fitting.length > 0 ? fitting : rows;
}

const NO_SHEET = 1e9; // a blank that fits no sheet is worse than any that does
const handlingOf = ({ settings, edges }: Rating): number => settings + edges;

/** One set of sizes that no other one found so far beats. */
interface Kept {
  readonly search: OneSearch;
  readonly values: readonly number[];
  readonly roughness: number;
  readonly handling: number;
  readonly excess: number;
  readonly paper: number;
}
const scoresOf = ({ roughness, handling, excess, paper }: Kept) => [roughness, handling, excess, paper];

/** A style in one way of its construction, read as forms. */
interface OneSearch {
  readonly options: Chosen;
  readonly forms: StyleForms;
}

function searchOne(question: EasyMarkQuestion, options: Chosen, kept: Kept[], memo: YieldMemo): void {
  const { style, need } = question;
  const symbols = Object.keys(style.symbols);
  const { lists, usual } = triesFor({ ...question, options });
  const base = sizingOf(
    question,
    options,
    Object.fromEntries(symbols.map((name, i) => [name, lists[i]?.[0] ?? ticks(0)])),
  );
  const varied = lists.map((list) => list.length > 1);
  const forms = markFormsOf(style, base, symbols, varied);
  const tried = holdIdle(lists, usual, forms);
  const limits = limitsOf(style, options, overSymbols(style, base)).filter((limit) => canBreak(limit, tried));
  const inside = insideForms(style, base);
  const wanted = need.map((side) => Math.max(1, side));
  const { across, up } = question.paper;
  const judging = { wanted, limits: limits.length, sheet: across * up };
  for (const groups of groupSizes(tried, forms, { inside, need: wanted, limits }, question))
    keepBest(groups, judging, { options, forms }, question, kept, memo);
}

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

/** Pairs of one roughness that may still be worth keeping, column by column. */
interface Found {
  readonly first: number[];
  readonly second: number[];
  readonly handling: number[];
  readonly excess: number[];
  /** No fewer sheets than this, by area alone. */
  readonly paper: number[];
}

/**
 * In order of roughness, then excess, a pair stays if it needs less paper than every row before it with no more excess and handling.
 * Paper is counted only where it could still be less than that, and each blank once.
 */
function keepBest(
  groups: GroupedSearch,
  judging: Judging,
  search: OneSearch,
  { paper, tool }: EasyMarkQuestion,
  kept: Kept[],
  memo: YieldMemo,
): void {
  const firsts = byRoughness(groups.first.ratings);
  const seconds = byRoughness(groups.second.ratings);
  for (let roughness = 0; roughness < firsts.length + seconds.length - 1; roughness++) {
    const rivals = kept.filter((row) => row.roughness <= roughness);
    const found: Found = { first: [], second: [], handling: [], excess: [], paper: [] };
    for (let r = 0; r <= roughness; r++)
      pairUp(groups, firsts[r] ?? [], seconds[roughness - r] ?? [], judging, rivals, found);
    const order = found.excess.map((_, i) => i).sort((a, b) => num(found.excess, a) - num(found.excess, b));
    for (const i of order) {
      const [handling, excess] = [num(found.handling, i), num(found.excess, i)];
      const rival = leastPaper(rivals, handling, excess);
      if (rival <= num(found.paper, i)) continue;
      const values = joinValues(groups, num(found.first, i), num(found.second, i));
      const blanks = blanksAt(search.forms, values);
      if (rival <= (leastSheetsPerBox(blanks, paper, memo) ?? NO_SHEET)) continue;
      const sheets = sheetsPerBox(blanks, paper, tool, memo) ?? NO_SHEET;
      if (sheets >= rival) continue;
      const row = { search, values, roughness, handling, excess, paper: sheets };
      kept.push(row);
      rivals.push(row);
    }
  }
}

/** What a pair is judged by: the room asked for, how many limits follow it among the forms, and the sheet's area. */
interface Judging {
  readonly wanted: readonly number[];
  readonly limits: number;
  readonly sheet: number;
}

/** Adds the pairs that give the room within the limits and that no rival beats already, by area. Tens of thousands pass here. */
function pairUp(
  { first, second, constants, stride }: GroupedSearch,
  firsts: readonly number[],
  seconds: readonly number[],
  { wanted, limits, sheet }: Judging,
  rivals: readonly Kept[],
  found: Found,
): void {
  const axes = wanted.length;
  const ends = axes + limits;
  const half = new Float64Array(stride);
  for (const a of firsts) {
    for (let f = 0; f < stride; f++)
      half[f] = (constants[f] as number) + (first.adds[a * stride + f] as number);
    const rating = first.ratings[a] as PartRating;
    pair: for (const b of seconds) {
      const from = b * stride;
      let room = 1;
      for (let f = 0; f < axes; f++) {
        const has = Math.round((half[f] as number) + (second.adds[from + f] as number));
        const least = wanted[f] as number;
        if (has < least) continue pair;
        room *= has / least;
      }
      for (let f = axes; f < ends; f++)
        if (Math.round((half[f] as number) + (second.adds[from + f] as number)) < 0) continue pair;
      let paper = 0;
      for (let f = ends; f < stride; f += 2) {
        const across = (half[f] as number) + (second.adds[from + f] as number);
        const up = (half[f + 1] as number) + (second.adds[from + f + 1] as number);
        paper += 1 / Math.floor(sheet / (across * up));
      }
      const { settings, edges } = joinRatings(rating, second.ratings[b] as PartRating);
      const least = Math.min(paper, NO_SHEET);
      if (leastPaper(rivals, settings + edges, room - 1) <= least) continue;
      found.first.push(a);
      found.second.push(b);
      found.handling.push(settings + edges);
      found.excess.push(room - 1);
      found.paper.push(least);
    }
  }
}

/** Places of the ratings of each roughness. */
function byRoughness(ratings: readonly PartRating[]): number[][] {
  const places: number[][] = [];
  ratings.forEach(({ roughness }, i) => {
    while (places.length <= roughness) places.push([]);
    places[roughness]?.push(i);
  });
  return places;
}

/** The least paper among rows with no more handling and excess; infinite where there is none. */
function leastPaper(rivals: readonly Kept[], handling: number, excess: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < rivals.length; i++) {
    const row = rivals[i] as Kept;
    if (row.paper < least && row.handling <= handling && row.excess <= excess) least = row.paper;
  }
  return least;
}

const num = (column: readonly number[], i: number): number => column[i] as number;

const blanksAt = ({ blanks }: StyleForms, values: readonly number[]) =>
  blanks.map(({ piece, across, up }) => ({
    piece,
    across: ticks(valueAt(across, values)),
    up: ticks(valueAt(up, values)),
  }));

/** The row as laid; none where its straight marks do not read as the forms said, or the room falls short. */
function layRow({ search, values, paper }: Kept, question: EasyMarkQuestion, memo: YieldMemo): EasyRow[] {
  const { style, need } = question;
  const { forms, options } = search;
  const sizes = Object.fromEntries(
    Object.keys(style.symbols).map((name, i) => [name, ticks(values[i] ?? 0)]),
  );
  const net = layNet(style, sizingOf(question, options, sizes));
  const blanks = net.pieces.map(({ id, blank: { across, up } }) => ({ piece: id, across, up }));
  const asLaid = blanksAt(forms, values).every(
    ({ across, up }, i) => across === blanks[i]?.across && up === blanks[i].up,
  );
  const inside = [net.inside.width, net.inside.depth, net.inside.height] as const;
  const reader = markReader(forms.marks, question);
  const rating = reader.rate(values);
  if (rating === null || inside.some((side, axis) => side < (need[axis] ?? 0))) return [];
  if (!asLaid && forms.byTemplate === 0) return [];
  const sheets = asLaid ? paper : (sheetsPerBox(blanks, question.paper, question.tool, memo) ?? NO_SHEET);
  return [
    {
      sizes,
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
    },
  ];
}
