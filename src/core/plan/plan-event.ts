import type { WorkbookFile } from '../../../shared/workbook';
import { planCost } from './cost';
import { boxesOfEvent, type EventBox } from './event-boxes';
import { partsOfBoxes } from './event-parts';
import { countBoxActs, countStrokes, sumActs, timesActs } from './hand-acts';
import { type Pace, planHours } from './hours';
import { planPapers, type SheetPlanner } from './plan-papers';
import { planTape, tapeOfBox } from './plan-tape';
import { remark } from './remarks';
import { shopForPaper, shopForRolls } from './shopping';
import { benchToolOf, cuttingToolOf, isRolled } from './stock-rows';
import type { ActCounts, EventPlan, PlannedLine, ShoppingRow } from './types';

export type EventRows = Pick<WorkbookFile, 'recipes' | 'events' | 'papers' | 'supplies' | 'tools'>;

export interface EventPlanOptions {
  /** The sheet solver with its effort and progress chosen. */
  readonly planSheets?: SheetPlanner;
  readonly pace?: Pace;
}

/** What an event comes to: sheets and how they are cut, what to buy, cost, hours, and what stands in the way. Null: there is no such event. */
export function planEvent(
  rows: EventRows,
  eventId: string,
  options: EventPlanOptions = {},
): EventPlan | null {
  const event = rows.events.find(({ id }) => id === eventId);
  if (!event) return null;
  const tool = rows.tools[0];
  const { boxes, findings } = boxesOfEvent(event, rows.recipes);
  const lines = boxes.map((box) => planLine(box, benchToolOf(tool)));
  const cut = planPapers(partsOfBoxes(boxes), rows.papers, tool, options.planSheets);
  const tape = rows.supplies.filter(isRolled).find(({ id, kind }) => id === event.tapeId && kind === 'tape');
  const taped = planTape(boxes, tape);

  const shopping: ShoppingRow[] = cut.papers.flatMap((planned) => {
    const paper = rows.papers.find(({ id }) => id === planned.paperId);
    return paper ? [shopForPaper(planned, paper, lines)] : [];
  });
  if (taped.rolls && tape) shopping.push(shopForRolls(taped.rolls, tape, lines));

  const ordered = sumOf(boxes, (box) => box.ordered);
  const making = sumOf(boxes, (box) => box.making);
  const cost = planCost(shopping, ordered, event.currency);
  const strokes = sumOf(cut.papers, ({ plan }) => countStrokes(plan, cuttingToolOf(tool).stack));
  const batch = sumActs({ cut: strokes }, ...lines.map((line) => timesActs(line.acts, line.making)));
  return {
    eventId,
    name: event.name,
    date: event.date,
    ordered,
    making,
    lines,
    papers: cut.papers,
    rolls: taped.rolls ? [taped.rolls] : [],
    shopping,
    cost,
    hours: planHours(batch, making, options.pace),
    findings: [
      ...findings,
      ...cut.findings,
      ...taped.findings,
      ...shopping
        .filter(({ id }) => cost.unpriced.includes(id))
        .map(({ id, name }) => remark('price-missing', id, name)),
    ],
  };
}

function planLine(box: EventBox, tool: ReturnType<typeof benchToolOf>): PlannedLine {
  const { line, recipe, net, paperId, ordered, spares, making } = box;
  const tape = tapeOfBox(box);
  const placed: ActCounts = {
    place: (box.dressing?.pieces ?? []).reduce((sum, { perBox }) => sum + perBox, 0),
  };
  return {
    lineId: line.id,
    recipeId: recipe.id,
    name: recipe.name,
    styleId: recipe.styleId,
    paperId,
    ordered,
    spares,
    making,
    tape,
    acts: sumActs(countBoxActs(net, tool, tape), placed),
  };
}

const sumOf = <Item>(items: readonly Item[], amount: (item: Item) => number): number =>
  items.reduce((sum, item) => sum + amount(item), 0);
