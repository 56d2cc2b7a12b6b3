import type { BoxNet } from '../net/types';
import type { Dressing, DressingPiece } from '../rows/dressing';
import type { Ticks } from '../units';
import { fitPiece } from './fit-piece';
import type { FlatSize } from './panel-size';
import { type PlacedPiece, placePiece } from './place-piece';

/** A dressing piece with its cut size on this box; no size where it does not fit. */
export interface SizedPiece {
  readonly piece: DressingPiece;
  readonly size: FlatSize | null;
}

/** Every cut piece of a dressing at its size on a box, on the maker's marks. */
export const sizePieces = (net: BoxNet, { pieces }: Dressing, mark: Ticks): readonly SizedPiece[] =>
  pieces.map((piece) => ({ piece, size: fitPiece(net, piece, mark) }));

/** Those that are stuck on a panel, where they lie on the flat net with its outside up. */
export const placePieces = (net: BoxNet, sized: readonly SizedPiece[]): readonly PlacedPiece[] =>
  sized.flatMap(({ piece, size }) => (size ? (placePiece(net, piece, size) ?? []) : []));
