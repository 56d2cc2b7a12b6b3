import {
  type BenchOp,
  type BenchProgram,
  type BoxCard,
  CAUTIONS,
  type CardStep,
  JOINING,
} from '../core/bench';
import { sizeWords } from '../core/draw/strokes/length-text';
import { type Ruler, toMm } from '../core/units';

const NOT_LENGTHS = ['quarters', 'strips'];

/** An act with its lengths in millimeters: every number in it but turns and angles. */
function inMm(part: unknown, name = ''): unknown {
  if (NOT_LENGTHS.includes(name)) return part;
  if (typeof part === 'number') return toMm(part);
  if (Array.isArray(part)) return part.map((item) => inMm(item));
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, inMm(value, key)]));
}
const opMm = (op: BenchOp) => inMm(op);

const stepWords = ({ id, kind, headline, details, template, tips, cautions, ops }: CardStep) => ({
  id,
  kind,
  headline,
  details,
  template,
  tips,
  cautions: cautions.map((code) => CAUTIONS[code]),
  ops,
});

/** A card as operations (millimeters) and as words, piece by piece. */
export const describeCard = (pieces: readonly BoxCard[]) =>
  pieces.map(({ piece, program, steps, joins }) => ({
    piece: piece.id,
    label: piece.label,
    joins,
    faceUp: program.faceUp,
    fenceSettings: program.fenceSettings,
    turns: program.turns,
    ops: program.ops.map(opMm),
    words: steps.map(stepWords),
  }));

/** The same card for reading: numbered steps, what is added below each, cautions once a piece. */
export function cardText(title: string, pieces: readonly BoxCard[], ruler: Ruler): string {
  const parts = pieces.map(({ piece, program, steps, joins }) => {
    const cautions = [...new Set(steps.flatMap((step) => step.cautions))].map((code) => CAUTIONS[code]);
    return [
      `${title}: ${piece.label}`,
      joins ? JOINING : `Cut size ${sizeWords(piece.blank.across, piece.blank.up, ruler)}${scored(program)}.`,
      ...cautions,
      '',
      ...steps.flatMap(({ headline, details, tips }, i) => [
        `${i + 1}. ${headline}`,
        ...[...details, ...tips.map((tip) => `Tip: ${tip}`)].map((row) => `   ${row}`),
      ]),
    ].join('\n');
  });
  return `${parts.join('\n\n')}\n`;
}

/** Which face lies up for the scores, where there are any. */
const scored = ({ ops, faceUp }: BenchProgram): string =>
  ops.some(({ op }) => op === 'crease')
    ? `; score with the ${faceUp === 'outside' ? 'good side' : 'inside'} up`
    : '';
