import type { Chosen } from '../styles/language/types';
import { ticks } from '../units';
import type { CuttingTool, SheetPaper } from '../yield';
import { type StyleForms, valueAt } from './mark-forms';
import { joinRatings, type PartRating } from './rate-marks';
import { leastSheetsPerBox, sheetsPerBox, type YieldMemo } from './sheets-per-box';
import { type GroupedSearch, joinValues } from './size-groups';

export const NO_SHEET = 1e9; // a blank that fits no sheet is worse than any that does

/** One set of sizes that no other one found so far beats. */
export interface Kept {
  readonly search: OneSearch;
  readonly values: readonly number[];
  readonly roughness: number;
  readonly handling: number;
  readonly excess: number;
  readonly paper: number;
}

/** A style in one way of its construction, read as forms. */
export interface OneSearch {
  readonly options: Chosen;
  readonly forms: StyleForms;
  /** Whether something does not move evenly with the sizes, so that a row may turn out otherwise when laid. */
  readonly bends: boolean;
}

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
export function keepBest(
  groups: GroupedSearch,
  judging: Judging,
  search: OneSearch,
  { paper, tool }: { readonly paper: SheetPaper; readonly tool: CuttingTool },
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
export interface Judging {
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

export const blanksAt = ({ blanks }: StyleForms, values: readonly number[]) =>
  blanks.map(({ piece, across, up }) => ({
    piece,
    across: ticks(valueAt(across, values)),
    up: ticks(valueAt(up, values)),
  }));
