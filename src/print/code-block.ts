import { encode } from 'uqr';
import { areaMark } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import type { At } from '../core/plane';
import { type Block, besideBlocks, space, stackBlocks, textBlock } from './block';
import { TYPE_MM } from './print-document';

/** Quiet modules round a code. source: ISO/IEC 18004, four modules (from memory). */
const QUIET = 4;

/** A link as a QR code (ISO/IEC 18004, error correction L so that modules stay large), with its quiet edge, `sizeMm` each way. */
function codeBlock(link: string, sizeMm: number): Block {
  const { data, size } = encode(link, { ecc: 'L', border: 0 });
  const module = sizeMm / (size + 2 * QUIET);
  const at = (column: number, row: number): At => [(QUIET + column) * module, -(QUIET + row) * module];
  const marks: Mark[] = data.flatMap((cells, row) =>
    runsOf(cells).map(([from, to]) =>
      areaMark('code', [at(from, row + 1), at(to, row + 1), at(to, row), at(from, row)]),
    ),
  );
  return { heightMm: sizeMm, marks };
}

const MODULE_MM = 0.4; // a phone reads it at a hand's breadth. source: our own, tried out
const LEAST_MM = 34;
const BESIDE_MM = 6;

/** The recipe's own link as a code with what it is for beside it; where it is too long for a code, what to do instead. */
export function linkBlock(link: string | null, widthMm: number): Block {
  const words = (text: string, roomMm: number, bold = false) =>
    textBlock(text, { widthMm: roomMm, sizeMm: bold ? TYPE_MM.heading : TYPE_MM.body, bold });
  if (link === null || link.length > MOST_LETTERS_IN_CODE)
    return words('This box is too long for a QR code. Keep its file instead, from Share.', widthMm);
  const modules = encode(link, { ecc: 'L', border: 0 }).size + 2 * QUIET;
  const sizeMm = Math.max(LEAST_MM, modules * MODULE_MM);
  const roomMm = widthMm - sizeMm - BESIDE_MM;
  return besideBlocks(
    [0, codeBlock(link, sizeMm)],
    [
      sizeMm + BESIDE_MM,
      stackBlocks([
        words('This box as a QR code', roomMm, true),
        space(2),
        words(
          'Point a phone camera here to open this box. Nothing is sent anywhere; the whole box is in the code.',
          roomMm,
        ),
      ]),
    ],
  );
}

/** The code by itself, with the fewest words above it; null where the link is too long for one. */
export function smallCodeBlock(link: string): { readonly block: Block; readonly widthMm: number } | null {
  if (link.length > MOST_LETTERS_IN_CODE) return null;
  const modules = encode(link, { ecc: 'L', border: 0 }).size + 2 * QUIET;
  const widthMm = Math.max(LEAST_MM, modules * MODULE_MM);
  const words = textBlock('This box as a QR code', { widthMm, sizeMm: TYPE_MM.small });
  return { block: stackBlocks([words, codeBlock(link, widthMm)]), widthMm };
}

/** Most letters a code of this kind holds at level L. source: ISO/IEC 18004, version 40, bytes (from memory). */
const MOST_LETTERS_IN_CODE = 2953;

/** The same code for the screen: a square of `size` cells each way, quiet edge included, and the path of its dark cells; null if it is too long. */
export function codeOf(link: string): { readonly size: number; readonly path: string } | null {
  if (link.length > MOST_LETTERS_IN_CODE) return null;
  const { data, size } = encode(link, { ecc: 'L', border: QUIET });
  const path = data.flatMap((cells, row) =>
    runsOf(cells).map(([from, to]) => `M${from} ${row}H${to}V${row + 1}H${from}Z`),
  );
  return { size, path: path.join('') };
}

/** Runs of dark cells in a row, so that no seam shows between neighbors. */
function runsOf(cells: readonly boolean[]): [from: number, to: number][] {
  const runs: [number, number][] = [];
  cells.forEach((dark, column) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last && last[1] === column) last[1] = column + 1;
    else runs.push([column, column + 1]);
  });
  return runs;
}
