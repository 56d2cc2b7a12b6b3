import type { Face, PieceNet } from '../net/types';
import { boxesOverlap, centredText, type TextMark, textBox } from './marks';
import { LESSER } from './running-marks';
import type { At } from './types';

/** A panel as the drawing names it: its faces together, the letter on it, and its words. */
export interface DrawnPanel {
  readonly panel: string;
  readonly letter: string;
  readonly words: string;
  readonly faces: readonly Face[];
}

/** `frontFlap` as a maker says it: `front flap`. */
export const panelWords = (panel: string): string =>
  panel.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();

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

/** Where words fit inside a panel drawn on paper: rings in mm. */
export type PanelRings = readonly (readonly At[])[];

/**
 * The panel's letter, with its name below where there is room, level or turned; nothing where even a letter would leave the panel.
 * `textMm`: type size of the letter.
 */
export function labelPanel(
  { letter, words }: DrawnPanel,
  rings: PanelRings,
  textMm: number,
  names: boolean,
): TextMark[] {
  const centre = centreOf(rings);
  const small = LESSER * textMm;
  const stack = (turnDeg: number): TextMark[] => {
    const shift = (towards: number): At =>
      turnDeg === 0 ? [centre[0], centre[1] + towards] : [centre[0] - towards, centre[1]];
    return [
      centredText(letter, shift(0.62 * small), textMm, { bold: true, turnDeg }),
      centredText(words, shift(-0.55 * textMm), small, { turnDeg }),
    ];
  };
  const alone = (sizeMm: number) => [centredText(letter, centre, sizeMm, { bold: true })];
  const tries = [...(names ? [stack(0), stack(90)] : []), alone(textMm), alone(small)];
  return tries.find((labels) => labels.every((label) => fitsInside(label, rings, 0.6))) ?? [];
}

/** A mark such as G on a glue area, clear of the words already there; null where there is no room. */
export function labelBeside(
  text: string,
  rings: PanelRings,
  sizeMm: number,
  taken: readonly TextMark[],
): TextMark | null {
  const xs = rings.flat().map(([x]) => x);
  const ys = rings.flat().map(([, y]) => y);
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
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
function centreOf(rings: PanelRings): At {
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

/** True when the text's box, widened by a margin, lies within the panel: tried at points along its border. */
function fitsInside(label: TextMark, rings: PanelRings, marginMm: number): boolean {
  const { left, right, bottom, top } = textBox(label);
  const steps = [0, 0.25, 0.5, 0.75, 1];
  return steps.every((s) =>
    steps.every((t) => {
      const x = left - marginMm + s * (right - left + 2 * marginMm);
      const y = bottom - marginMm + t * (top - bottom + 2 * marginMm);
      return rings.some((ring) => isInside([x, y], ring));
    }),
  );
}

function isInside([x, y]: At, ring: readonly At[]): boolean {
  let inside = false;
  ring.forEach(([x1, y1], i) => {
    const [x2, y2] = ring[(i + 1) % ring.length]!;
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  });
  return inside;
}

/** Room for a white patch behind words on a hatch, mm on paper. */
export const patchBehind = (label: TextMark) => {
  const { left, right, bottom, top } = textBox(label);
  return { left: left - 0.7, right: right + 0.7, bottom: bottom - 0.4, top: top + 0.7 };
};
