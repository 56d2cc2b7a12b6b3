import { jsPDF } from 'jspdf';
import { hatchLines } from '../core/draw/strokes/hatch';
import { INKS } from '../core/draw/strokes/inks';
import { textWidthMm, writable } from '../core/draw/strokes/letters';
import { pointOfArc } from '../core/draw/strokes/marks';
import type { Drawing, Mark } from '../core/draw/strokes/types';
import type { At } from '../core/plane';
import type { PrintDocument } from './print-document';

/** The two faces of public/fonts, as TrueType bytes. */
export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** A document as vector PDF at true size: selectable text, black only but for photographs, no scaling by the viewer; the same bytes every time. */
export function writePdf(document: PrintDocument, fonts: PdfFonts): Uint8Array {
  const [first] = document.pages;
  if (!first) throw new RangeError('a document without pages');
  const settings = { unit: 'mm', compress: true, putOnlyUsedFonts: true, floatPrecision: 5 } as const;
  const pdf = new jsPDF({ ...settings, format: sheetOf(first), orientation: orientationOf(first) });
  pdf.setCreationDate(new Date(document.stamp.madeAt));
  pdf.setFileId(fileId(document));
  pdf.setProperties({ title: writable(document.title), creator: 'Crease & Count' });
  pdf.viewerPreferences({ PrintScaling: 'None' });
  embedFace(pdf, fonts.regular, 'normal');
  embedFace(pdf, fonts.bold, 'bold');
  document.pages.forEach((page, index) => {
    if (index > 0) pdf.addPage(sheetOf(page), orientationOf(page));
    for (const { at, widthMm, heightMm, jpeg } of page.photos ?? []) {
      const [x, y] = at;
      const data = `data:image/jpeg;base64,${jpeg}`;
      pdf.addImage(data, 'JPEG', x, page.heightMm - y - heightMm, widthMm, heightMm);
    }
    for (const mark of page.marks) drawMark(pdf, mark, page.heightMm);
  });
  return new Uint8Array(pdf.output('arraybuffer'));
}

const sheetOf = ({ widthMm, heightMm }: Drawing): [number, number] => [widthMm, heightMm];
const orientationOf = ({ widthMm, heightMm }: Drawing) => (widthMm > heightMm ? 'landscape' : 'portrait');

function embedFace(pdf: jsPDF, bytes: Uint8Array, style: 'normal' | 'bold'): void {
  const file = `Inter-${style}.ttf`;
  pdf.addFileToVFS(file, Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  pdf.addFont(file, 'Inter', style);
}

/** 32 hexadecimal figures from the title, the code and the date: the FNV-1a hash, four times with different starts. */
function fileId({ title, stamp }: PrintDocument): string {
  const text = `${title}\n${stamp.code}\n${stamp.madeAt}`;
  return [0, 1, 2, 3]
    .map((start) => {
      let hash = 0x811c9dc5 ^ start;
      for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
      return (hash >>> 0).toString(16).padStart(8, '0').toUpperCase();
    })
    .join('');
}

function drawMark(pdf: jsPDF, mark: Mark, heightMm: number): void {
  const down = ([x, y]: At): At => [x, heightMm - y];
  if (mark.kind === 'line') strokePath(pdf, mark.ink, () => runOf(pdf, mark.points.map(down)));
  else if (mark.kind === 'arc') strokePath(pdf, mark.ink, () => arcOf(pdf, mark, down));
  else if (mark.kind === 'area') drawArea(pdf, mark, down);
  else drawText(pdf, mark, down);
}

function setStroke(pdf: jsPDF, widthMm: number, dashMm: readonly number[]): void {
  pdf.setDrawColor(0);
  pdf.setLineWidth(widthMm);
  pdf.setLineDashPattern([...dashMm], 0);
}

function strokePath(pdf: jsPDF, ink: keyof typeof INKS, path: () => void): void {
  const { widthMm, dashMm } = INKS[ink];
  if (widthMm === 0) return;
  setStroke(pdf, widthMm, dashMm);
  path();
  pdf.stroke();
}

function runOf(pdf: jsPDF, points: readonly At[], close = false): void {
  points.forEach(([x, y], i) => {
    if (i === 0) pdf.moveTo(x, y);
    else pdf.lineTo(x, y);
  });
  if (close) pdf.close();
}

/** Cubic curves of at most 45 degrees each, within four millionths of the radius (from memory: the usual 4/3 tan(a/4) handles). */
function arcOf(
  pdf: jsPDF,
  { centre, radius, fromDeg, sweepDeg }: Extract<Mark, { kind: 'arc' }>,
  down: (p: At) => At,
): void {
  const pieces = Math.max(1, Math.ceil(Math.abs(sweepDeg) / 45));
  const step = sweepDeg / pieces;
  const handle = (4 / 3) * Math.tan((step * Math.PI) / 720) * radius;
  const off = (deg: number, along: number): At => {
    const [x, y] = pointOfArc(centre, radius, deg);
    const [dx, dy] = pointOfArc([0, 0], along, deg + 90);
    return down([x + dx, y + dy]);
  };
  pdf.moveTo(...off(fromDeg, 0));
  for (let n = 0; n < pieces; n++) {
    const [from, to] = [fromDeg + n * step, fromDeg + (n + 1) * step];
    pdf.curveTo(...off(from, handle), ...off(to, -handle), ...off(to, 0));
  }
}

function drawArea(pdf: jsPDF, mark: Extract<Mark, { kind: 'area' }>, down: (p: At) => At): void {
  const { fill } = INKS[mark.ink];
  const rings = () => {
    for (const ring of [mark.ring, ...(mark.holes ?? [])]) runOf(pdf, ring.map(down), true);
  };
  if (fill === 'white' || fill === 'black') {
    pdf.setFillColor(fill === 'white' ? '#ffffff' : '#000000');
    rings();
    pdf.fillEvenOdd();
  }
  if (typeof fill !== 'string') {
    setStroke(pdf, fill.widthMm, fill.dashMm);
    for (const [from, to] of hatchLines(mark.ring, mark.holes ?? [], fill))
      runOf(pdf, [down(from), down(to)]);
    pdf.stroke();
  }
  strokePath(pdf, mark.ink, rings);
}

function drawText(pdf: jsPDF, mark: Extract<Mark, { kind: 'text' }>, down: (p: At) => At): void {
  const text = writable(mark.text);
  if (text.trim() === '') return;
  const width = textWidthMm(text, mark.sizeMm, mark.bold);
  const back = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? width / 2 : width;
  const turn = ((mark.turnDeg ?? 0) * Math.PI) / 180;
  const [x, y] = down([mark.at[0] - back * Math.cos(turn), mark.at[1] - back * Math.sin(turn)]);
  pdf.setFont('Inter', mark.bold ? 'bold' : 'normal');
  pdf.setFontSize((mark.sizeMm * 72) / 25.4);
  pdf.setTextColor('#000000');
  pdf.text(text, x, y, mark.turnDeg ? { angle: mark.turnDeg } : {});
}
