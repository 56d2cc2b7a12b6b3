import type { Contents, Dressing } from '../../../shared/workbook';
import { placePieces, sizePieces } from '../../core/dress';
import type { NeededRoom, Placed } from '../../core/fit';
import { outsideExtent, roomExtent, solidFigure } from '../../core/fold/solid-figure';
import type { BoxNet, PieceNet } from '../../core/net';
import type { Ticks } from '../../core/units';
import type { FoldedThing } from '../../ui/folded/space/box-model';

/** Everything of a piece that is to be seen in space. `holds`: how the contents lie, where this piece holds them. */
export function foldedThing(
  net: BoxNet,
  piece: PieceNet,
  holds: NeededRoom | undefined,
  contents: Contents | undefined,
  dressing: Dressing | undefined,
  mark: Ticks,
): FoldedThing {
  const figure = solidFigure(piece, net.caliperUm);
  const placed = dressing ? placePieces(net, sizePieces(net, dressing, mark)) : [];
  return {
    figure,
    across: piece.blank.across,
    outside: outsideExtent(piece, figure),
    room: roomExtent(piece, figure),
    things: (holds?.arrangement.placed ?? []).map((thing) => inFull(thing, contents)),
    thingsSize: holds ? ([...holds.arrangement.size] as [number, number, number]) : [0, 0, 0],
    placed: placed.filter(({ part }) => part === piece.id),
  };
}

/** An arrangement leaves out what stands above the rim, since the box need not hold it; a picture shows it. */
function inFull(thing: Placed, contents: Contents | undefined): Placed {
  const above = contents?.items.find(({ id }) => id === thing.item)?.aboveRimMm ?? 0;
  if (thing.shape !== 'cuboid' || above === 0) return thing;
  const [wide, deep, high] = thing.size;
  return { ...thing, size: [wide, deep, high + above] };
}
