import { type TextMark, textBox } from '../../../src/core/draw/strokes/marks';
import type { Drawing } from '../../../src/core/draw/strokes/types';
import { boxesOverlap } from '../../../src/core/plane';

/** Every pair of texts in a drawing that share room, as `one | other`. */
export function textCollisions({ marks }: Pick<Drawing, 'marks'>): string[] {
  const texts = marks.filter((mark): mark is TextMark => mark.kind === 'text');
  return texts.flatMap((text, i) =>
    texts
      .slice(i + 1)
      .filter((other) => boxesOverlap(textBox(text), textBox(other), 0.01))
      .map((other) => `${text.text} | ${other.text}`),
  );
}
