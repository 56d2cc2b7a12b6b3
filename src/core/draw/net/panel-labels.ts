import { panelWords } from '../../net/panel-words';
import type { Face, PieceNet } from '../../net/types';
import { type At, boxesOverlap, boxOf } from '../../plane';
import { CAP_HEIGHT, textWidthMm } from '../strokes/letters';
import { centredText, type TextMark, textBox, textMark } from '../strokes/marks';
import { LESSER } from '../strokes/running-marks';
import { fitsInside, type Rings, stackText } from '../strokes/text-stack';

/** A panel as the drawing names it: its faces together, the letter on it, and its words. */
export interface DrawnPanel {
  readonly panel: string;
  readonly letter: string;
  readonly words: string;
  readonly faces: readonly Face[];
}

/** No G, which stands for glue; no I and O, which read as figures. */
const LETTERS = 'ABCDEFHJKLMNPQRSTUVWXYZ';

/** The panels of a piece in the order of its faces, lettered A, B, … Z, A2, B2, … */
export function letterPanels(piece: PieceNet): DrawnPanel[] {
  const names = [...new Set(piece.faces.map((face) => face.panel))];
  return names.map((panel, place) => ({
    panel,
    letter: letterAt(place),
    words: panelWords(panel),
    faces: piece.faces.filter((face) => face.panel === panel),
  }));
}

const letterAt = (place: number) =>
  LETTERS.charAt(place % LETTERS.length) +
  (place < LETTERS.length ? '' : `${1 + Math.floor(place / LETTERS.length)}`);

/**
 * The panel's letter, with its name where there is room (below, beside, or turned), and a glue letter clear of both; nothing where even a
 * letter would leave the panel. The glue letter goes before the name. `textMm`: type size of the letter.
 */
export function labelPanel(
  { letter, words }: DrawnPanel,
  rings: Rings,
  textMm: number,
  names: boolean,
  glueLetter: string | null,
): readonly TextMark[] {
  const centre = centreOf(rings);
  const small = LESSER * textMm;
  const lines = [
    { text: letter, sizeMm: textMm, bold: true },
    { text: words, sizeMm: small },
  ];
  const tries = [
    ...(names
      ? [stackText(lines, centre), beside(letter, words, centre, textMm), stackText(lines, centre, 90)]
      : []),
    [centredText(letter, centre, textMm, { bold: true })],
    [centredText(letter, centre, small, { bold: true })],
  ].filter((labels) => labels.every((label) => fitsInside(label, rings, 0.6)));
  if (glueLetter === null) return tries[0] ?? [];
  for (const labels of tries) {
    const glue = labelBeside(glueLetter, rings, 0.72 * textMm, labels);
    if (glue) return [...labels, glue];
  }
  const along = centredText(glueLetter, centre, small, { bold: true, turnDeg: slantOf(rings) });
  if (fitsInside(along, rings, 0.2)) return [along];
  return tries[0] ?? [];
}

function beside(letter: string, words: string, [x, y]: At, textMm: number): TextMark[] {
  const gap = 0.35 * textMm;
  const [first, second] = [textWidthMm(letter, textMm, true), textWidthMm(words, LESSER * textMm)];
  const left = x - (first + gap + second) / 2;
  const foot = y - (CAP_HEIGHT * textMm) / 2;
  return [
    textMark(letter, [left, foot], textMm, { bold: true }),
    textMark(words, [left + first + gap, foot], LESSER * textMm),
  ];
}

/** A letter clear of the words already there, in the middle of the panel's longer way; null where there is no room. */
function labelBeside(
  text: string,
  rings: Rings,
  sizeMm: number,
  taken: readonly TextMark[],
): TextMark | null {
  const { left, right, bottom, top } = boxOf(rings.flat());
  const level = right - left > top - bottom;
  for (const share of [0.8, 0.2, 0.88, 0.12, 0.7, 0.3, 0.5]) {
    const at: At = level
      ? [left + share * (right - left), (bottom + top) / 2]
      : [(left + right) / 2, bottom + share * (top - bottom)];
    const label = centredText(text, at, sizeMm, { bold: true });
    const clear = taken.every((other) => !boxesOverlap(textBox(other), textBox(label), -0.6));
    if (clear && fitsInside(label, rings, 0.3)) return label;
  }
  return null;
}

/** Area-weighted middle of the rings, pulled to the middle of the card there so that words in a triangle stand where it is wide. */
function centreOf(rings: Rings): At {
  let [area, x, y] = [0, 0, 0];
  for (const ring of rings)
    ring.forEach(([x1, y1], i) => {
      const [x2, y2] = ring[(i + 1) % ring.length]!;
      const cross = x1 * y2 - x2 * y1;
      area += cross;
      x += (x1 + x2) * cross;
      y += (y1 + y2) * cross;
    });
  return [x / (3 * area), y / (3 * area)];
}

/** Which way the longest edge of a panel runs, so that words on it read from left to right or upwards. */
function slantOf(rings: Rings): number {
  let [longest, slant] = [0, 0];
  for (const ring of rings)
    ring.forEach(([x1, y1], i) => {
      const [x2, y2] = ring[(i + 1) % ring.length]!;
      const length = Math.hypot(x2 - x1, y2 - y1);
      if (length > longest) [longest, slant] = [length, (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI];
    });
  return slant > 90 ? slant - 180 : slant <= -90 ? slant + 180 : slant;
}
