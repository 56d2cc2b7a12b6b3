import type { PartGroup } from './group-parts';
import { listLayouts, mostOfSheet } from './list-layouts';

/** A rectangle worth something, at most so often; whole numbers. */
export interface WorthShape {
  readonly across: number;
  readonly up: number;
  readonly worth: number;
  /** Null: as often as it fits. */
  readonly most: number | null;
}

const FINER = 100; // Worth is counted in hundredths, so that whole discounts are fine enough.

/** Groups that fit the sheet, worth and discounts in hundredths. */
interface Question {
  readonly groups: readonly PartGroup[];
  readonly worths: readonly number[];
  readonly discounted: readonly number[];
  /** All discounts there are. */
  readonly given: number;
}

function layQuestion(
  sheet: { readonly across: number; readonly up: number },
  shapes: readonly WorthShape[],
  turns: boolean,
  discounts: readonly number[],
): Question {
  const fitting = shapes
    .map((shape, at) => ({ shape, discount: discounts[at] ?? 0, lies: liesWithin(shape, sheet, turns) }))
    .filter(({ shape, lies }) => shape.worth > 0 && lies.length > 0);
  const groups = fitting.map(({ shape, lies }, at) => {
    const byArea = Math.floor((sheet.across * sheet.up) / (shape.across * shape.up));
    return { ids: [String(at)], count: Math.min(shape.most ?? byArea, byArea), points: shape.worth, lies };
  });
  const worths = groups.map(({ points }) => points * FINER);
  const cuts = fitting.map(({ discount }, at) => Math.min(worths[at]!, Math.max(0, Math.floor(discount * FINER)))); // biome-ignore format: one line
  return {
    groups,
    worths,
    discounted: worths.map((worth, at) => worth - cuts[at]!),
    given: cuts.reduce((sum, cut, at) => sum + cut * groups[at]!.count, 0),
  };
}

/**
 * Whether no sheet is worth more than `bound`: asks for every content worth one more, and there must be none. Discounts, one a shape, only
 * make that shorter: a content within the limits is worth, discounted, no less than itself less all discounts there are. True only if
 * nothing was left out. Shares no line with the search.
 */
export function holdsNoMore(
  sheet: { readonly across: number; readonly up: number },
  shapes: readonly WorthShape[],
  turns: boolean,
  bound: number,
  discounts: readonly number[],
  shouldStop: () => boolean,
): boolean {
  const { groups, worths, discounted, given } = layQuestion(sheet, shapes, turns, discounts);
  const least = (bound + 1) * FINER;
  const asked = [
    { points: worths, least },
    { points: discounted, least: least - given },
  ];
  return listLayouts(groups, sheet, asked, shouldStop)?.length === 0;
}

/** What no sheet exceeds if all of it were cut into the part that is worth most for its area. */
export const mostByArea = (
  sheet: { readonly across: number; readonly up: number },
  shapes: readonly WorthShape[],
): number =>
  Math.floor(Math.max(0, ...shapes.map(({ across, up, worth }) => worth / (across * up))) * sheet.across * sheet.up); // biome-ignore format: one line

/** What no sheet exceeds, by the discounts alone: the most it holds with them and no limits, and all discounts there are. */
export function mostByDiscounts(
  sheet: { readonly across: number; readonly up: number },
  shapes: readonly WorthShape[],
  turns: boolean,
  discounts: readonly number[],
): number {
  const { groups, discounted, given } = layQuestion(sheet, shapes, turns, discounts);
  return Math.floor((mostOfSheet(groups, sheet, discounted) + given) / FINER);
}

const liesWithin = (
  { across, up }: WorthShape,
  sheet: { readonly across: number; readonly up: number },
  turns: boolean,
): { across: number; up: number }[] =>
  [{ across, up }, ...(turns && across !== up ? [{ across: up, up: across }] : [])].filter(
    (lie) => lie.across <= sheet.across && lie.up <= sheet.up,
  );
