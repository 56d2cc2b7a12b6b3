import { unwritable } from '../core/draw/strokes/letters';
import type { EventPlan } from '../core/plan';
import type { PdfFonts } from './pdf';
import type { PrintDocument, PrintStamp } from './print-document';

export { printBenchCard } from './bench-card';
export { codeOf } from './code-block';
export { cutName, letterParts, printCuttingSheets } from './cutting-sheet';
export { printDecorateMap } from './decorate-map';
export { printHandout } from './handout';
export {
  type HandoutInput,
  handoutContent,
} from './handout-content';
export { handoutPage } from './handout-page';
export { printKitLabels } from './kit-labels';
export { printLesson } from './lesson-plan';
export { namesTooLong, placesOn, printNameCards } from './name-cards';
export { nestedDxf, nestedSvg, printNestedSheet } from './nested-sheet';
export type { PdfFonts } from './pdf';
export { PAPER_MM, type PaperName, type PrintDocument, type PrintStamp, shortId } from './print-document';
export { printRunSheet } from './run-sheet';
export { printSeason } from './season-plan';
export { printShoppingList, shoppingCsv } from './shopping-list';
export { shoppingText } from './shopping-text';
export { svgOf } from './svg';
export { printTableList } from './table-list';
export { printTemplate } from './template';
export { placeTips } from './tip-places';

/** Letters that stand on these pages and that the embedded face cannot write: they come out as "?". */
export const lettersLost = ({ pages }: PrintDocument): readonly string[] =>
  unwritable(
    pages.flatMap(({ marks }) => marks.map((mark) => (mark.kind === 'text' ? mark.text : ''))).join(' '),
  );

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
