import type { FavorEvent, Recipe, WorkbookFile } from '../../shared/workbook';
import { cuttingToolOf, type EventPlan, listRunSheet } from '../core/plan';
import { fileStem } from '../core/rows/text';
import {
  calendarOf,
  type PaperName,
  type PrintDocument,
  printCuttingSheets,
  printRunSheet,
  printShoppingList,
  shoppingCsv,
  shortId,
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
 * Everything an event is printed as: cutting plan, shopping list (PDF and CSV), batch sheet, a card and a template for each recipe in it; the
 * schedule as a calendar file where there is a date, and every figure as JSON.
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
  const own = (document: PrintDocument) => ({ of: event, document });
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
      return prints.map((document) => ({ of: recipe, document }));
    }),
  ];
  const files: PlanFile[] = [];
  for (const { of, document } of documents)
    files.push({ name: `${apart(document.name, of)}.pdf`, content: await printPdf(document, desk) });
  const named = (what: string, ending: string) =>
    `${apart(list.name.replace(/shopping-list$/, what), event)}.${ending}`;
  return [
    ...files,
    { name: named('shopping-list', 'csv'), content: shoppingCsv({ plan, locale: LOCALE }) },
    ...(plan.timetable ? [{ name: named('schedule', 'ics'), content: await calendarOf(plan, stamp) }] : []),
    { name: named('plan', 'json'), content: `${JSON.stringify(describePlan(plan), null, 2)}\n` },
  ];
}

const nameOfPaper = ({ paperId }: Recipe, { papers }: WorkbookFile): string | null =>
  papers.find(({ id }) => id === paperId)?.name ?? null;

/** The file name with what tells rows of one name apart, where the name alone does not say it. */
const apart = (file: string, { id, name }: Pick<FavorEvent, 'id' | 'name'>): string =>
  fileStem(name, '') === id ? file : `${file}-${shortId(id)}`;

/** Each recipe of the event once, in the order of its lines. */
function recipesOf(plan: EventPlan, workbook: WorkbookFile): readonly Recipe[] {
  const ids = new Set(plan.lines.map(({ recipeId }) => recipeId));
  return [...ids].flatMap((id) => workbook.recipes.find((recipe) => recipe.id === id) ?? []);
}
