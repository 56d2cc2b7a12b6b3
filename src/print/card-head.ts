import type { BoxCard } from '../core/bench';
import { lengthWords, sizeWords } from '../core/draw/strokes/length-text';
import { ticks } from '../core/units';
import type { BenchCardInput } from './bench-card';

/** What stands at the head of a piece's steps: its name, and in sentences its style, sizes, grain, paper and tape. */
export function cardHead(
  { piece, joins, program }: BoxCard,
  { recipeName, styleName, inside, cards, ruler, grain, paperName }: BenchCardInput,
): { readonly title: string; readonly lines: readonly string[] } {
  const unitless = (length: (typeof inside)['width']) => lengthWords(length, ruler).replace(/ (in|mm)$/, '');
  const room = [inside.width, inside.depth, inside.height].map(unitless).join(' × ');
  const { across, up } = piece.blank;
  const grainWords = grain === null ? '' : `, grain along the ${unitless(grain === 'across' ? across : up)}`;
  const tape = program.ops.reduce(
    (sum, op) => sum + (op.op === 'stick' && op.tape !== 'glue' ? op.tape.strips * op.tape.length : 0),
    0,
  );
  return {
    title: cards.length > 1 ? `${recipeName}: ${piece.label}` : recipeName,
    lines: [
      `${styleName}. Inside ${room} ${ruler.unit}.`,
      ...(joins ? [] : [`Cut size ${sizeWords(across, up, ruler)}${grainWords}.`]),
      ...(paperName ? [`Paper: ${paperName}.`] : []),
      ...(tape > 0 ? [`Double-sided tape: ${lengthWords(ticks(tape), ruler)} in all, or glue instead.`] : []),
    ],
  };
}
