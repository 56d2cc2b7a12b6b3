import { type At, type Box, boxRing } from '../../plane';
import { GLUE_LETTER } from '../net/glue-areas';
import { INKS } from './inks';
import { CAP_HEIGHT, textWidthMm } from './letters';
import { areaMark, centredText, lineMark, textMark } from './marks';
import { patchBehind } from './text-stack';
import type { Drawing, Ink, Mark } from './types';

/** Inks that a legend explains, in its order; the others speak for themselves. */
const EXPLAINED: readonly Ink[] = [
  'cut',
  'slit',
  'score-valley',
  'score-mountain',
  'score-flat',
  'glue',
  'glue-below',
  'bare',
  'covered',
  'bleed',
  'waste',
  'offcut',
  'dimension',
];

/** The inks of some drawings that a legend explains, each once. */
export function inksIn(drawings: readonly Pick<Drawing, 'marks'>[]): Ink[] {
  const there = new Set(
    drawings.flatMap(({ marks }) => marks.map((mark) => (mark.kind === 'text' ? '' : mark.ink))),
  );
  return EXPLAINED.filter((ink) => there.has(ink));
}

const SAMPLE_MM = 14; // long enough for two dashes of every line
const AFTER_SAMPLE_MM = 2;
const BETWEEN_MM = 7;

/** What each ink means: samples with words, in rows no wider than `widthMm`. Local frame: the top left corner is the origin. */
export function drawLegend(
  inks: readonly Ink[],
  widthMm: number,
  sizeMm: number,
): { readonly marks: Mark[]; readonly heightMm: number } {
  const rowMm = 2.1 * sizeMm;
  const marks: Mark[] = [];
  let [left, row] = [0, 0];
  for (const ink of inks) {
    const words = INKS[ink].means;
    const width = SAMPLE_MM + AFTER_SAMPLE_MM + textWidthMm(words, sizeMm);
    if (left > 0 && left + width > widthMm) [left, row] = [0, row + 1];
    const middle = -(row + 0.5) * rowMm;
    marks.push(
      ...drawSample(ink, sizeMm, {
        left,
        right: left + SAMPLE_MM,
        bottom: middle - 0.75 * sizeMm,
        top: middle + 0.75 * sizeMm,
      }),
      textMark(words, [left + SAMPLE_MM + AFTER_SAMPLE_MM, middle - (CAP_HEIGHT * sizeMm) / 2], sizeMm),
    );
    left += width + BETWEEN_MM;
  }
  return { marks, heightMm: inks.length === 0 ? 0 : (row + 1) * rowMm };
}

function drawSample(ink: Ink, sizeMm: number, box: Box): Mark[] {
  const { left, right, bottom, top } = box;
  const middle = (bottom + top) / 2;
  if (ink === 'glue' || ink === 'glue-below')
    return [areaMark(ink, boxRing(box)), ...letterOn(GLUE_LETTER[ink], box, sizeMm)];
  if (ink === 'bare' || ink === 'covered' || ink === 'waste' || ink === 'offcut')
    return [areaMark(ink, boxRing(box))];
  const across: At[] = [
    [left, middle],
    [right, middle],
  ];
  if (ink === 'dimension')
    return [
      lineMark(ink, across),
      { kind: 'arc', ink, centre: [left + 0.9, middle], radius: 0.9, fromDeg: 0, sweepDeg: 360 },
      ...[0.5, 0.9].map((share) => {
        const x = left + share * (right - left);
        return lineMark(ink, [[x - 0.9, middle - 0.9], [x + 0.9, middle + 0.9]]); // biome-ignore format: one stroke
      }),
    ];
  const bars = ink === 'slit' ? [left, right] : [];
  return [lineMark(ink, across), ...bars.map((x) => lineMark(ink, [[x, middle - 1.1], [x, middle + 1.1]]))]; // biome-ignore format: one stroke
}

function letterOn(text: string, { left, right, bottom, top }: Box, sizeMm: number): Mark[] {
  const label = centredText(text, [(left + right) / 2, (bottom + top) / 2], sizeMm, { bold: true });
  return [areaMark('paper', patchBehind(label)), label];
}
