import type { Draft } from '../../core/draft/draft';
import { isSide, OPPOSITE } from '../../core/draft/sides';
import { nameValues } from '../../core/net';
import { type NamedSide, namedSides } from '../../core/net/lay-piece';
import { piecesOf } from '../../core/styles';
import type { BoxResult } from '../../state/results/box-result';

/** Every edge of the piece that something can be done at: each line once, as the edge of the panel that carries it. */
export function sidesOf(box: BoxResult, draft: Draft, pieceId: string): readonly NamedSide[] {
  const spec = piecesOf(box.style, box.net.options)[pieceId];
  if (spec === undefined) return [];
  const { values, caliperUm, options } = box.net;
  const sizes = Object.fromEntries(
    Object.keys(box.style.symbols).flatMap((name) =>
      values[name] === undefined ? [] : [[name, values[name]]],
    ),
  );
  const sides = namedSides(spec, nameValues(box.style, { sizes, caliperUm, options }));
  const first = Object.keys(draft.pieces?.[pieceId]?.panels ?? {})[0];
  // the side a panel hangs by is drawn as its parent’s
  const hinges = new Set(
    Object.entries(spec.panels).flatMap(([name, { on }]) => {
      if (name === first || on === undefined) return [];
      const edge = on.split('.')[1] ?? '';
      return [`${name}.${isSide(edge) ? OPPOSITE[edge] : 'e0'}`];
    }),
  );
  return sides.filter(({ panel, edge }) => !hinges.has(`${panel}.${edge}`));
}
