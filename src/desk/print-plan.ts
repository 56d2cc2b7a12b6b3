import type { FavorEvent, Recipe, WorkbookFile } from '../../shared/workbook';
import { cuttingToolOf, type EventPlan, listRunSheet } from '../core/plan';
import {
  calendarOf,
  type PaperName,
  type PrintDocument,
  printCuttingSheets,
  printRunSheet,
  printShoppingList,
  shoppingCsv,
} from '../print';
import { describePlan } from './describe-plan';
import { benchFor, makeRecipe } from './made-box';
import { printPdf } from './paper';
import { benchCardOf, templateOf } from './print-box';
import { stampOf } from './stamp';
import { toolOfEvent } from './tool-of-event';
import type { Desk } from './verb';

const LOCALE = 'en';

/** A file a maker prints or opens, by its name. */
export interface PlanFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Everything an event is printed as: cutting sheets, shopping list (PDF and CSV), run sheet, a card and a template for each recipe in it; the
 * timetable as a calendar file where there is a date, and every figure as JSON.
 */
export async function printPlan(
  plan: EventPlan,
  event: FavorEvent,
  workbook: WorkbookFile,
  paper: PaperName,
  desk: Desk,
): Promise<PlanFile[]> {
  const tool = toolOfEvent(event, workbook);
  const { ruler } = benchFor(tool, tool?.unit ?? 'in');
  const stamp = stampOf(event, desk);
  const shared = { plan, ruler, paper, stamp };
  const list = printShoppingList({ ...shared, locale: LOCALE });
  const own = (document: PrintDocument) => ({ of: event.id, document });
  const documents = [
    own(printCuttingSheets({ ...shared, tool: cuttingToolOf(tool) })),
    own(list),
    own(printRunSheet({ ...shared, sheet: listRunSheet(plan, workbook, tool) })),
    ...recipesOf(plan, workbook).flatMap((recipe) => {
      const box = makeRecipe(recipe, tool);
      const prints = box
        ? [
            benchCardOf(box, paper, stampOf(recipe, desk), nameOfPaper(recipe, workbook)),
            templateOf(box, paper, stampOf(recipe, desk)),
          ]
        : [];
      return prints.map((document) => ({ of: recipe.id, document }));
    }),
  ];
  const files: PlanFile[] = [];
  for (const { of, document } of documents)
    files.push({ name: `${document.name}-${partOf(of)}.pdf`, content: await printPdf(document, desk) });
  const named = (what: string, ending: string) =>
    `${list.name.replace(/shopping-list$/, what)}-${partOf(event.id)}.${ending}`;
  return [
    ...files,
    { name: named('shopping-list', 'csv'), content: shoppingCsv({ plan, locale: LOCALE }) },
    ...(plan.timetable ? [{ name: named('timetable', 'ics'), content: await calendarOf(plan, stamp) }] : []),
    { name: named('plan', 'json'), content: `${JSON.stringify(describePlan(plan), null, 2)}\n` },
  ];
}

const nameOfPaper = ({ paperId }: Recipe, { papers }: WorkbookFile): string | null =>
  papers.find(({ id }) => id === paperId)?.name ?? null;

/** What tells the files of rows of one name apart: the end of a random id (RFC 9562, version 4, from memory), else the whole id. */
const partOf = (id: string): string =>
  /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(id) ? id.slice(-8) : id;

/** Each recipe of the event once, in the order of its lines. */
function recipesOf(plan: EventPlan, workbook: WorkbookFile): readonly Recipe[] {
  const ids = new Set(plan.lines.map(({ recipeId }) => recipeId));
  return [...ids].flatMap((id) => workbook.recipes.find((recipe) => recipe.id === id) ?? []);
}
