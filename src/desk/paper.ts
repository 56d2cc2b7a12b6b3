import type { LengthUnit } from '../core/units';
import { lettersLost, type PaperName, type PdfFonts, type PrintDocument, pdfOf } from '../print';
import { suggestName } from './nearest-name';
import { refuse } from './refuse';
import type { Desk, DeskRefusal, Given } from './verb';

const PAPERS = ['letter', 'a4'] as const;

/** The paper in the printer: `--paper`, else letter where lengths are in inches and A4 where they are in millimeters. */
export function readPaper(given: Given, unit: LengthUnit): PaperName | DeskRefusal {
  const written = given.one['paper'] ?? (unit === 'in' ? 'letter' : 'a4');
  const says = `There is no paper “${written}”. ${suggestName(written, PAPERS)}`;
  return (
    PAPERS.find((paper) => paper === written) ??
    refuse('unknown-paper', '--paper', written, PAPERS.join(', '), says)
  );
}

/** A printed document as PDF, set in the app's own face. */
export function printPdf(document: PrintDocument, desk: Desk): Promise<Uint8Array> {
  const lost = lettersLost(document);
  if (lost.length > 0)
    desk.tell(`${document.name}: a PDF cannot show these letters and prints “?” for each: ${lost.join(' ')}`);
  const fonts: PdfFonts = { regular: desk.font('regular'), bold: desk.font('bold') };
  return pdfOf(document, fonts);
}
