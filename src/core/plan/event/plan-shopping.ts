import type { FavorEvent, Paper, Supply } from '../../rows';
import { type OrderWays, orderWays } from '../buying/shop-order';
import { type ShoppingRow, writeRow } from '../buying/shopping';
import {
  needGlue,
  needPaper,
  needPieces,
  needRolls,
  type ShoppingNeed,
  shortOf,
} from '../buying/shopping-needs';
import type { PlannedSupplies } from '../supplies/plan-supplies';
import type { PlannedLine, PlannedPaper } from './types';

interface Cupboard {
  readonly papers: readonly Paper[];
  readonly supplies: readonly Supply[];
}

/** The whole list, stock used first, bought in the way that is cheapest at the till. */
export function planShopping(
  lines: readonly PlannedLine[],
  papers: readonly PlannedPaper[],
  supplies: PlannedSupplies,
  cupboard: Cupboard,
  { terms }: Pick<FavorEvent, 'terms'>,
): { readonly rows: readonly ShoppingRow[]; readonly ways: OrderWays } {
  const needs = [...needPapers(lines, papers, cupboard), ...needSupplies(lines, supplies, cupboard)];
  const ways = orderWays(
    needs.map((need) => ({ need: shortOf(need), packs: need.sold })),
    terms,
  );
  const [{ reaches, purchases }] = ways;
  return { rows: needs.map((need, i) => writeRow(need, purchases[i] ?? null, reaches)), ways };
}

const needPapers = (
  lines: readonly PlannedLine[],
  planned: readonly PlannedPaper[],
  { papers }: Cupboard,
): ShoppingNeed[] =>
  planned.flatMap((each) => {
    const paper = papers.find(({ id }) => id === each.paperId);
    return paper ? [needPaper(each, paper, lines, each.spoiled)] : [];
  });

function needSupplies(
  lines: readonly PlannedLine[],
  { rolls, pieces, glue }: PlannedSupplies,
  { supplies }: Cupboard,
): ShoppingNeed[] {
  return supplies.flatMap((supply) => {
    if (supply.kind === 'glue') return glue?.supplyId === supply.id ? [needGlue(glue, supply, lines)] : [];
    if ('rollMm' in supply)
      return rolls
        .filter(({ supplyId }) => supplyId === supply.id)
        .map((each) => needRolls(each, supply, lines));
    return pieces
      .filter(({ supplyId }) => supplyId === supply.id)
      .map((each) => needPieces(each, supply, lines));
  });
}
