import type { FavorEvent, Recipe, WorkbookFile } from '../../shared/workbook';
import { type EventPlan, listRunSheet } from '../core/plan';
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
  const [tool] = workbook.tools;
  const { ruler } = benchFor(tool, tool?.unit ?? 'in');
  const stamp = stampOf(event, desk);
  const shared = { plan, ruler, paper, stamp };
  const documents: PrintDocument[] = [
    printCuttingSheets(shared),
    printShoppingList({ ...shared, locale: LOCALE }),
    printRunSheet({ ...shared, sheet: listRunSheet(plan, workbook, tool) }),
    ...recipesOf(plan, workbook).flatMap((recipe) => {
      const box = makeRecipe(recipe, tool);
      return box ? [benchCardOf, templateOf].map((print) => print(box, paper, stampOf(recipe, desk))) : [];
    }),
  ];
  const files: PlanFile[] = [];
  for (const document of documents) {
    const alike = files.filter(({ name }) => name.startsWith(`${document.name}.`)).length;
    const name = alike === 0 ? document.name : `${document.name}.${alike + 1}`;
    files.push({ name: `${name}.pdf`, content: await printPdf(document, desk) });
  }
  const shopping = documents[1]?.name ?? 'shopping-list';
  const stem = shopping.replace(/-shopping-list$/, '');
  return [
    ...files,
    { name: `${shopping}.csv`, content: shoppingCsv({ plan, locale: LOCALE }) },
    ...(plan.timetable ? [{ name: `${stem}-timetable.ics`, content: await calendarOf(plan, stamp) }] : []),
    { name: `${stem}-plan.json`, content: `${JSON.stringify(describePlan(plan), null, 2)}\n` },
  ];
}

/** Each recipe of the event once, in the order of its lines. */
function recipesOf(plan: EventPlan, workbook: WorkbookFile): readonly Recipe[] {
  const ids = new Set(plan.lines.map(({ recipeId }) => recipeId));
  return [...ids].flatMap((id) => workbook.recipes.find((recipe) => recipe.id === id) ?? []);
}
