import { type BoxCard, type CardStep, drawnLie, placeAtBench, sizeAsItLies, toNet } from '../../core/bench';
import { leftKey, topKey } from '../../core/draw/net/net-table';
import { type Ticks, ticks } from '../../core/units';

/**
 * The numbers of the net that a step works with, and no others: where it scores, slits or cuts away, and how far. The fence stands at another
 * edge once the card is turned, or for a left hand, so the same line has another number there.
 */
export function litNumbers(
  { piece, program }: BoxCard,
  { ops, lie }: CardStep,
  faceUp: 'inside' | 'outside',
): string[] {
  const { blank } = piece;
  const { across, up } = sizeAsItLies(blank, lie);
  const drawn = drawnLie(piece, faceUp);
  const none = ticks(0);
  const keyOf = (x: readonly [Ticks, Ticks], y: readonly [Ticks, Ticks]): string => {
    const [one, other] = [0, 1].map((end) => {
      const { x: netX, y: netY } = toNet(blank, lie, { x: x[end] ?? none, y: y[end] ?? none });
      return placeAtBench(blank, drawn, [netX, netY]);
    }) as [readonly [number, number], readonly [number, number]];
    return one[0] === other[0] ? leftKey(one[0]) : topKey(blank.up - one[1]);
  };
  const upright = (x: Ticks): string => keyOf([x, x], [none, up]);
  const level = (y: Ticks): string[] => (y > 0 && y < up ? [keyOf([none, across], [y, y])] : []);
  const keys = program.ops.slice(ops.from, ops.to).flatMap((op): string[] => {
    switch (op.op) {
      case 'blank':
        return [leftKey(op.across), topKey(op.up)];
      case 'score':
        return [upright(op.at), ...(op.span ? [op.span.from, op.span.to].flatMap(level) : [])];
      case 'slit':
        return [upright(op.at), ...[op.from, op.to].flatMap(level)];
      case 'corner':
        return [
          upright(op.corner.endsWith('left') ? op.across : ticks(across - op.across)),
          ...level(op.corner.startsWith('near') ? op.up : ticks(up - op.up)),
        ];
      default:
        return [];
    }
  });
  return [...new Set(keys)];
}
