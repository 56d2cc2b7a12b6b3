import type { EventPlan } from '../core/plan';
import type { PdfFonts } from './pdf';
import type { PrintDocument, PrintStamp } from './print-document';

export { type BenchCardInput, printBenchCard } from './bench-card';
export { codeOf } from './code-block';
export { type CuttingSheetsInput, cutName, letterParts, printCuttingSheets } from './cutting-sheet';
export { type DecorateMapInput, printDecorateMap } from './decorate-map';
export { printHandout } from './handout';
export {
  type HandoutContent,
  type HandoutInput,
  type HandoutPhoto,
  handoutContent,
} from './handout-content';
export { handoutPage } from './handout-page';
export { type KitLabelsInput, kitLines, printKitLabels } from './kit-labels';
export { nestedDxf, nestedSvg, printNestedSheet } from './nested-sheet';
export type { PdfFonts } from './pdf';
export { PAPER_MM, type Page, type PaperName, type PrintDocument, type PrintStamp } from './print-document';
export { printRunSheet, type RunSheetInput } from './run-sheet';
export { printShoppingList, type ShoppingListInput, shoppingCsv } from './shopping-list';
export { shoppingText } from './shopping-text';
export { svgOf } from './svg';
export { printTemplate, type TemplateInput } from './template';

/** A document as the bytes of a PDF. The PDF writer is loaded when it is first asked for. */
export async function pdfOf(document: PrintDocument, fonts: PdfFonts): Promise<Uint8Array> {
  const { writePdf } = await import('./pdf');
  return writePdf(document, fonts);
}

/** A timetable as a calendar file (RFC 5545). The calendar writer is loaded when it is first asked for. */
export async function calendarOf(plan: EventPlan, stamp: PrintStamp): Promise<string> {
  const { writeCalendar } = await import('./timetable-calendar');
  return writeCalendar(plan, stamp);
}
