import type { BoxNet } from '../../core/net';
import { printLength } from '../../core/units';
import { sizeWords, useRuler } from '../../ui/measure';
import { useWords } from '../../ui/words';

/** The room an item has, read out large: width, depth and height inside, thin card taken off. */
export function InsideSize({ net }: { net: BoxNet }) {
  const ruler = useRuler();
  const words = useWords().box;
  const { width, depth, height } = net.inside;
  const other = [width, depth, height].map((length) => printLength(length, ruler).other);
  return (
    <p className="inside-size" role="status">
      <span className="inside-size-label">{words.inside}</span>{' '}
      <strong>{sizeWords([width, depth, height], ruler)}</strong>{' '}
      <span className="soft">{other.join(' × ')}</span>
    </p>
  );
}
