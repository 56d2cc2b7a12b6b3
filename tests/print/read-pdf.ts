import { readFileSync } from 'node:fs';
import { getDocument, OPS, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { PdfFonts } from '../../src/print';

/** The faces that the app embeds. */
export const fonts: PdfFonts = {
  regular: new Uint8Array(readFileSync('public/fonts/inter-regular.ttf')),
  bold: new Uint8Array(readFileSync('public/fonts/inter-bold.ttf')),
};

interface ReadText {
  readonly text: string;
  readonly sizeMm: number;
  readonly at: readonly [x: number, y: number];
}

/** A path as the page's own operators give it, in mm from the lower left corner of the page. */
export interface ReadPath {
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly curved: boolean;
  readonly dashed: boolean;
  readonly widthMm: number;
  readonly stroked: boolean;
}

export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly texts: readonly ReadText[];
  readonly paths: readonly ReadPath[];
  /** Names of every operator used. */
  readonly operators: ReadonlySet<string>;
  /** Every colour set, as `red green blue` from 0 to 255. */
  readonly colours: ReadonlySet<string>;
}

const MM = 25.4 / 72;
const NAMES = new Map(Object.entries(OPS).map(([name, code]) => [code, name]));

/** A PDF read back by an independent reader: pdfjs-dist 4.10.38. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPage[]> {
  const pdf = await getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS }).promise;
  const pages: ReadPage[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const { fnArray, argsArray } = await page.getOperatorList();
    pages.push({
      widthMm: width * MM,
      heightMm: height * MM,
      texts: items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
        return [{ text: item.str, sizeMm: Math.hypot(a, b) * MM, at: [x * MM, y * MM] as const }];
      }),
      paths: readPaths(fnArray, argsArray),
      operators: new Set(fnArray.map((code) => NAMES.get(code) ?? `${code}`)),
      colours: new Set(
        fnArray.flatMap((code, i) =>
          code === OPS.setFillRGBColor || code === OPS.setStrokeRGBColor
            ? [Array.from(argsArray[i] as number[]).join(' ')]
            : [],
        ),
      ),
    });
  }
  await pdf.destroy();
  return pages;
}

function readPaths(codes: readonly number[], args: readonly unknown[]): ReadPath[] {
  const found: ReadPath[] = [];
  let [dashed, widthMm] = [false, 0];
  let open: OpenPath[] = [];
  codes.forEach((code, i) => {
    const given = args[i] as unknown[];
    if (code === OPS.setDash) dashed = (given[0] as number[]).length > 0;
    if (code === OPS.setLineWidth) widthMm = (given[0] as number) * MM;
    if (code === OPS.constructPath) readPath(given[0] as number[], given[1] as number[], open);
    const stroked = [OPS.stroke, OPS.closeStroke].includes(code);
    if (!stroked && ![OPS.fill, OPS.eoFill].includes(code)) return;
    found.push(...open.map((path) => ({ ...path, dashed, widthMm, stroked })));
    open = [];
  });
  return found;
}

interface OpenPath {
  readonly points: [number, number][];
  curved: boolean;
}

/** Goes on with a path: the reader hands a long one over in pieces. */
function readPath(steps: readonly number[], numbers: readonly number[], paths: OpenPath[]): void {
  let next = 0;
  const point = (): [number, number] => [numbers[next++]! * MM, numbers[next++]! * MM];
  for (const step of steps) {
    if (step === OPS.moveTo) paths.push({ points: [point()], curved: false });
    else if (step === OPS.lineTo) paths.at(-1)!.points.push(point());
    else if (step === OPS.curveTo) {
      const path = paths.at(-1)!;
      path.points.push(point(), point(), point());
      path.curved = true;
    } else if (step !== OPS.closePath) throw new Error(`a path step not met before: ${NAMES.get(step)}`);
    else paths.at(-1)!.points.push(paths.at(-1)!.points[0]!);
  }
}
