import type { Recipe, Tool } from '../../shared/workbook';
import type { Ruler } from '../core/units';
import { benchOfRecipe } from '../state/results/bench-result';
import type { OpenWorkbook } from '../ui/frame/open-workbook';
import type { PageName } from '../ui/frame/pages';
import type { MadeFile, Printer, PrinterPaper } from '../ui/frame/printer';
import type { PrintName, PrintNeed } from '../ui/words/english/commands';
import { lacksPaper } from './choose-paper';

/** A document that can be made from what is open, or what it still needs and the page where that is given. */
export interface Printable {
  readonly name: PrintName;
  /** The box it is about; null for a document of the whole event. */
  readonly recipe: Recipe | null;
  readonly make: ((paper: PrinterPaper) => Promise<MadeFile>) | null;
  readonly need: { readonly what: PrintNeed; readonly page: PageName } | null;
}

interface Around {
  readonly printer: Printer;
  readonly tool: Tool | undefined;
  readonly ruler: Ruler;
}

/** Every document of a box or an event, in the order of the work. */
export function printablesOf(open: OpenWorkbook, around: Around): readonly Printable[] {
  const ofBoxes = open.recipes.flatMap((recipe) => ofRecipe(recipe, around));
  return open.event ? [...ofEvent(open, around.printer), ...ofBoxes] : ofBoxes;
}

type Making = readonly [PrintName, (paper: PrinterPaper) => Promise<MadeFile>];

/** A nest takes its time and a choice of piece and gap, so it is laid and printed on the page of the sheets. */
const nestedSheet = (shared: PrintNeed | null): Printable => ({
  name: 'nestedSheet',
  recipe: null,
  make: null,
  need: shared === null ? { what: 'nest', page: 'sheets' } : { what: shared, page: 'event' },
});

function ofRecipe(recipe: Recipe, { printer, tool, ruler }: Around): Printable[] {
  const bench = benchOfRecipe(recipe, tool, ruler);
  const stepsNeed = bench && bench.stops > 0 ? 'fixBox' : bench?.cards.length ? null : 'noSteps';
  const withSteps: readonly Making[] = [
    ['benchCard', (paper) => printer.benchCard(recipe, paper)],
    ['handoutPaper', (paper) => printer.handout(recipe, paper)],
    ['handoutPage', () => printer.handoutPage(recipe)],
  ];
  const always: readonly Making[] = [
    ['template', (paper) => printer.template(recipe, paper)],
    ['decorateMap', (paper) => printer.decorateMap(recipe, recipe.dressings[0]?.id ?? null, paper)],
    ['netSvg', () => printer.netFile(recipe, 'svg', null)],
    ['netDxf', () => printer.netFile(recipe, 'dxf', null)],
    ['netFold', () => printer.netFile(recipe, 'fold', null)],
    ...(recipe.ownStyle === undefined ? [] : [['styleFile', () => printer.styleFile(recipe)] as const]),
  ];
  const styleNeed = bench ? null : 'pickStyle';
  return [
    ...withSteps.map((making) => printable(making, recipe, stepsNeed, 'box')),
    ...always.map((making) => printable(making, recipe, styleNeed, 'box')),
  ];
}

function ofEvent({ event, plan }: OpenWorkbook, printer: Printer): Printable[] {
  if (!event) return [];
  const none = () => Promise.reject(new Error('there is no plan yet'));
  const making: readonly Making[] = [
    ['cuttingSheets', (paper) => (plan ? printer.cuttingSheets(plan, paper) : none())],
    ['shoppingList', (paper) => (plan ? printer.shoppingList(plan, paper) : none())],
    ['shoppingTable', () => (plan ? printer.shoppingTable(plan) : none())],
    ['runSheet', (paper) => (plan ? printer.runSheet(plan, paper) : none())],
    ['calendar', () => (plan ? printer.calendar(plan) : none())],
    ['kitLabels', (paper) => (plan ? printer.kitLabels(plan, paper) : none())],
    ['lessonPlan', (paper) => (plan ? printer.lessonPlan(plan, paper) : none())],
  ];
  const forGuests: readonly Making[] = [
    ['nameCards', (paper) => printer.nameCards(event, paper)],
    ['tableList', (paper) => printer.tableList(event, paper)],
  ];
  const shared: PrintNeed | null =
    event.lines.length === 0 ? 'count' : !plan ? 'counting' : lacksPaper(plan) ? 'paper' : null;
  const own: Partial<Record<PrintName, PrintNeed | null>> = {
    calendar: plan?.timetable ? null : 'date',
    kitLabels: plan?.kit ? null : 'kits',
    lessonPlan: plan?.lesson ? null : 'kits',
  };
  const guests: PrintNeed | null = event.guests?.length ? null : 'guests';
  const [cutting, ...others] = making.map((each) =>
    printable(each, null, shared ?? own[each[0]] ?? null, 'event'),
  );
  return [
    ...(cutting ? [cutting] : []),
    nestedSheet(shared),
    ...others,
    ...forGuests.map((each) => printable(each, null, guests, 'event')),
  ];
}

const printable = (
  [name, make]: Making,
  recipe: Recipe | null,
  what: PrintNeed | null,
  page: PageName,
): Printable => ({
  name,
  recipe,
  make: what === null ? make : null,
  need: what === null ? null : { what, page },
});
