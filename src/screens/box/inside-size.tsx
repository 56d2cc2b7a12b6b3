import { memo } from 'react';
import { lengthText } from '../../core/draw/strokes/length-text';
import type { BoxNet } from '../../core/net';
import { printLength, type Ticks } from '../../core/units';
import { useRuler } from '../../ui/fields/measure';
import { usePageWords } from '../../ui/words';

const SIDES = ['width', 'depth', 'height'] as const;

/** The room an item has, read out large: width, depth and height inside, thin card taken off. */
export const InsideSize = memo(function InsideSize({ net }: { net: BoxNet }) {
  const words = usePageWords().box;
  return (
    <section className="inside-size" aria-label={words.inside}>
      <h2>{words.inside}</h2>
      <dl>
        {SIDES.map((side) => (
          <div key={side}>
            <dt>{words.sides[side]}</dt>
            <InsideLength length={net.inside[side]} />
          </div>
        ))}
      </dl>
    </section>
  );
});

function InsideLength({ length }: { length: Ticks }) {
  const ruler = useRuler();
  return (
    <dd>
      <strong>{printLength(length, ruler).typographic}</strong>
      <span className="caption">{lengthText(length, ruler).below}</span>
    </dd>
  );
}
