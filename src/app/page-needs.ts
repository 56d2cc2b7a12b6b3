import { boxOfRecipe, countStops } from '../state/results/box-result';
import { useToolInHand } from '../state/results/tool-in-hand';
import { roughSize, useRuler } from '../ui/fields/measure';
import type { OpenWorkbook } from '../ui/frame/open-workbook';
import type { PageName, PageNeed } from '../ui/frame/pages';
import { useWords } from '../ui/words';
import { lacksPaper } from './choose-paper';

const plain = (says: string): PageNeed => ({ says, flagged: false });
const flagged = (says: string): PageNeed => ({ says, flagged: true });

/** What each page of a workbook has come to, or needs next. */
export function usePageNeeds({
  recipe,
  event,
  plan,
  failed,
}: OpenWorkbook): Readonly<Record<PageName, PageNeed>> {
  const words = useWords().needs;
  const ruler = useRuler();
  const tool = useToolInHand();
  const box = recipe && boxOfRecipe(recipe, tool);
  const stops = box ? countStops(box) : 0;
  const bought = plan?.shopping.filter(({ short }) => short > 0).length ?? 0;
  const counted = (event?.lines.length ?? 0) > 0;
  const sheets = plan?.papers.reduce((sum, paper) => sum + paper.plan.sheets, 0) ?? 0;

  return {
    contents: recipe?.contents?.items.length
      ? plain(words.things(recipe.contents.items.reduce((sum, { count }) => sum + count, 0)))
      : plain(words.whatInside),
    box: boxNeed(),
    fold: plain(words.seeItClose),
    marks: plain(words.easyMarks),
    dressing: recipe?.dressings.length ? plain(words.ways(recipe.dressings.length)) : plain(words.bare),
    event:
      counted && plan ? plain(words.favors(plan.ordered, plan.making - plan.ordered)) : plain(words.howMany),
    sheets: sheetsNeed(),
    shopping: shoppingNeed(),
    bench: stops > 0 ? flagged(words.mendFirst) : plain(words.ready),
    handout: plain(words.toTeach),
  };

  function boxNeed(): PageNeed {
    if (!box) return flagged(words.pickStyle);
    const { width, depth, height } = box.net.inside;
    return stops > 0 ? flagged(words.mends(stops)) : plain(roughSize([width, depth, height], ruler));
  }

  function sheetsNeed(): PageNeed {
    if (!event) return plain(words.oneSheet);
    if (!counted) return plain(words.needsCount);
    if (!plan) return failed === null ? plain(words.counting) : flagged(words.unplanned);
    return lacksPaper(plan) ? flagged(words.needsPaper) : plain(words.sheets(sheets));
  }

  function shoppingNeed(): PageNeed {
    if (!counted) return plain(words.needsCount);
    if (!plan) return failed === null ? plain(words.counting) : flagged(words.unplanned);
    if (lacksPaper(plan)) return flagged(words.needsPaper);
    return plain(bought > 0 ? words.buy(bought) : words.nothingToBuy);
  }
}
