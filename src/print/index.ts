import type { PdfFonts } from './pdf';
import type { PrintDocument } from './print-document';

export { type BenchCardInput, type PieceCard, printBenchCard } from './bench-card';
export { type CuttingSheetsInput, letterParts, printCuttingSheets } from './cutting-sheet';
export { type DecorateMapInput, printDecorateMap } from './decorate-map';
export type { PdfFonts } from './pdf';
export { PAPER_MM, type Page, type PaperName, type PrintDocument, type PrintStamp } from './print-document';
export { printShoppingList, type ShoppingListInput, shoppingCsv } from './shopping-list';
export { svgOf } from './svg';
export { printTemplate, type TemplateInput } from './template';

/** A document as the bytes of a PDF. The PDF writer is loaded when it is first asked for. */
export async function pdfOf(document: PrintDocument, fonts: PdfFonts): Promise<Uint8Array> {
  const { writePdf } = await import('./pdf');
  return writePdf(document, fonts);
}
