import type { BoxCard } from '../core/bench';
import { lengthText, lengthWords, sizeWords } from '../core/draw/strokes/length-text';
import { ticks } from '../core/units';
import type { BenchCardInput } from './bench-card';
import { templatePages } from './template';

/** What stands at the head of a piece's steps: its name, and in sentences its style, sizes, grain, paper and tape. */
export function cardHead(
  card: BoxCard,
  input: BenchCardInput,
): { readonly title: string; readonly lines: readonly string[] } {
  const { piece, joins, program } = card;
  const { recipeName, styleName, inside, cards, ruler, grain, paperName } = input;
  const unitless = (length: (typeof inside)['width']) => lengthWords(length, ruler).replace(/ (in|mm)$/, '');
  const room = [inside.width, inside.depth, inside.height]
    .map((length) => lengthText(length, ruler).number)
    .join(' × ');
  const isFirst = cards[0]?.piece === piece;
  const named = styleName === recipeName ? [] : [`${styleName}.`];
  const { across, up } = piece.blank;
  const grainWords = grain === null ? '' : `, grain along the ${unitless(grain === 'across' ? across : up)}`;
  const tape = program.ops.reduce(
    (sum, op) => sum + (op.op === 'stick' && op.tape !== 'glue' ? op.tape.strips * op.tape.length : 0),
    0,
  );
  return {
    title: cards.length > 1 ? `${recipeName}: ${piece.label}` : recipeName,
    lines: [
      ...(isFirst ? [[...named, `Inside about ${room} ${ruler.unit}.`].join(' ')] : []),
      ...(joins ? [] : [`Cut size ${sizeWords(across, up, ruler)}${grainWords}.`]),
      ...(paperName && isFirst ? [`Paper: ${paperName}.`] : []),
      ...(tape > 0 ? [`Double-sided tape: ${lengthWords(ticks(tape), ruler)} in all, or glue instead.`] : []),
      ...(joins ? [] : templateLine(card, input)),
    ],
  };
}

/** So many lengths between marks are slower to measure than to prick through. source: our choice */
const MANY_BETWEEN = 6;

/** Curves need the template; corners between the marks are easier with it. */
function templateLine({ piece, steps }: BoxCard, { paper, ruler }: BenchCardInput): string[] {
  const words = steps.flatMap(({ headline, details }) => [headline, ...details]).join(' ');
  const between = words.match(/ (full|scant)\b/g)?.length ?? 0;
  const isCurved = steps.some(({ template }) => template.length > 0);
  if (!isCurved && between < MANY_BETWEEN) return [];
  const pages = templatePages(piece, paper, ruler);
  const said = pages === 1 ? '1 page' : `${pages} pages`;
  return [isCurved ? `Curves: print the template (${said}).` : `Easier: print the template (${said}).`];
}
