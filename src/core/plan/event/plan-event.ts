import type { EventLine, FavorEvent, Paper, Recipe, Supply, Tool } from '../../rows';
import { planCost } from '../buying/cost';
import type { OrderSum } from '../buying/shop-order';
import { benchToolOf, cutMarkOf, cuttingToolOf } from '../buying/stock-rows';
import { planCarry } from '../carry/plan-carry';
import { planLesson } from '../class/lesson';
import { ownActs, packingActs, withoutTrials } from '../class/teacher-acts';
import { findForGuests } from '../guests/guest-findings';
import { countBoxActs, countStrokes, sumActs } from '../run/hand-acts';
import { type EventHours, planHours } from '../run/hours';
import { planTimetable, type Timetable } from '../run/timetable';
import { planSupplies } from '../supplies/plan-supplies';
import type { TapedLine } from '../supplies/plan-tape';
import { askPrice } from './asking';
import { boxesOfEvent } from './event-boxes';
import { cautionsOfEvent } from './event-cautions';
import { partsOfBoxes } from './event-parts';
import { listKit } from './kit-list';
import { planPapers, type SheetPlanner } from './plan-papers';
import { planShopping } from './plan-shopping';
import { remark } from './remarks';
import { findTurnedPrint } from './turned-print';
import type { EventPlan, PlannedGlue, PlannedLine } from './types';

export interface EventRows {
  readonly recipes: readonly Recipe[];
  readonly events: readonly FavorEvent[];
  readonly papers: readonly Paper[];
  readonly supplies: readonly Supply[];
  readonly tools: readonly Tool[];
}

export interface EventPlanOptions {
  /** The sheet solver with its effort and progress chosen. */
  readonly planSheets?: SheetPlanner;
}

/** What an event comes to: sheets and how they are cut, what to buy, cost, hours, and what stands in the way. Null: there is no such event. */
export function planEvent(
  rows: EventRows,
  eventId: string,
  options: EventPlanOptions = {},
): EventPlan | null {
  const event = rows.events.find(({ id }) => id === eventId);
  if (!event) return null;
  const sound = event.lines.filter((line) => !broken.has(line));
  try {
    return planLines(event, sound, rows, options);
  } catch (error) {
    for (const line of sound) if (!canBePlanned(event, line, rows, options)) broken.add(line);
    if (!sound.some((line) => broken.has(line))) throw error;
    return planEvent(rows, eventId, options);
  }
}

/** Lines that could not be planned even alone. Rows are never changed in place, so what was broken once stays so. */
const broken = new WeakSet<EventLine>();

function canBePlanned(
  event: FavorEvent,
  line: EventLine,
  rows: EventRows,
  options: EventPlanOptions,
): boolean {
  try {
    planLines(event, [line], rows, options);
    return true;
  } catch {
    return false;
  }
}

/** The event with these of its lines; the others are told of. */
function planLines(
  given: FavorEvent,
  sound: readonly EventLine[],
  rows: EventRows,
  options: EventPlanOptions,
): EventPlan {
  const event = { ...given, lines: [...sound] };
  const nameOf = (recipeId: string) => rows.recipes.find(({ id }) => id === recipeId)?.name ?? recipeId;
  const left = given.lines.filter((line) => broken.has(line));
  const tool = rows.tools.find(({ id }) => id === event.toolId) ?? rows.tools[0];
  const bench = benchToolOf(tool);
  const { boxes, findings } = boxesOfEvent(event, rows.recipes, cutMarkOf(bench));
  const parts = partsOfBoxes(boxes, rows.papers);
  const cards = parts.map(({ part }) => part);
  const cutting = cuttingToolOf(tool);
  const cut = planPapers(parts, rows.papers, tool, event, options.planSheets);
  const supplies = planSupplies(event, boxes, rows.supplies, cutMarkOf(bench));
  const lines = supplies.taped.map((line) => planLine(line, bench, rows.supplies));
  const { rows: shopping, ways } = planShopping(lines, cut.papers, supplies, rows, event);

  const ordered = sumOf(boxes, (box) => box.ordered);
  const making = sumOf(boxes, (box) => box.making);
  const strokes = sumOf(cut.papers, ({ plan }) => countStrokes(plan, cutting.stack));
  const kit = listKit(boxes, parts, rows.papers, supplies.taped, supplies.ties);
  const batch = sumActs({ cut: strokes }, ...lines.map((line) => ownActs(line, event)), packingActs(kit));
  const hours = planHours(batch, making, kit ? withoutTrials(event.pace) : event.pace);
  const timetable = timetableOf(event, hours, supplies.glue);
  const { carry, findings: carried } = planCarry(event, boxes, timetable);
  const cost = planCost(shopping, ways[0], ordered, event.currency);
  return {
    eventId: event.id,
    name: event.name,
    date: event.date,
    ordered,
    making,
    lines,
    papers: cut.papers,
    rolls: supplies.rolls,
    pieces: supplies.pieces,
    glue: supplies.glue,
    kit,
    lesson: kit ? planLesson(event, lines, kit, cost, hours, supplies.glue) : null,
    shopping,
    ways,
    cost,
    asking: event.asking ? askPrice(cost.using.totalMinor, hours.totalSeconds, ordered, event.asking) : null,
    hours,
    carry,
    timetable,
    findings: [
      ...left.map((line) => remark('box-broken', line.id, nameOf(line.recipeId))),
      ...findings,
      ...findForGuests(event, boxes, rows.supplies),
      ...findTurnedPrint(boxes, rows.papers),
      ...cut.findings,
      ...supplies.findings,
      ...carried,
      ...lines
        .filter(({ again }) => again > 0)
        .map(({ lineId, name }) => remark('spoiled-beyond-spares', lineId, name)),
      ...shopping
        .filter(({ id }) => cost.unpriced.includes(id))
        .map(({ id, name }) => remark('price-missing', id, name)),
      ...(isTooSmall(ways[0], event) ? [remark('order-below-minimum', event.id, event.name)] : []),
    ],
    cautions: cautionsOfEvent(boxes, cards, cutting, rows.supplies),
  };
}

function planLine(
  { box, strips }: TapedLine,
  bench: ReturnType<typeof benchToolOf>,
  supplies: readonly Supply[],
): PlannedLine {
  const { line, recipe, paperId, ordered, spares, practice, making, perKit, again, closes } = box;
  const fills = (supplyId: string | null) =>
    supplies.some(({ id, kind }) => id === supplyId && (kind === 'contents' || kind === 'wrap'));
  return {
    lineId: line.id,
    recipeId: recipe.id,
    name: recipe.name,
    styleId: recipe.styleId,
    paperId,
    dressingId: line.dressingId,
    ordered,
    spares,
    practice,
    making,
    again,
    closes,
    perKit,
    tape: strips,
    acts: countBoxActs(box, bench, strips, fills),
  };
}

const isTooSmall = ({ subtotalMinor }: OrderSum, { terms }: FavorEvent): boolean =>
  subtotalMinor > 0 && subtotalMinor < (terms?.minimumMinor ?? 0);

/** Half an evening a day, one day left free. source: our own defaults */
export const USUAL_DAYS = { dayMinutes: 180, daysFree: 1 };

function timetableOf(
  { date, pace }: FavorEvent,
  hours: EventHours,
  glue: PlannedGlue | null,
): Timetable | null {
  if (date === null) return null;
  const waits = glue ? { glue: glue.pressMinutes, 'close-bottom': glue.dryMinutes } : {};
  return planTimetable(date, hours, pace ?? USUAL_DAYS, waits);
}

const sumOf = <Item>(items: readonly Item[], amount: (item: Item) => number): number =>
  items.reduce((sum, item) => sum + amount(item), 0);
