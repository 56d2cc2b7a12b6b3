import { savedName } from '../net/saved-panel';
import type { BoxNet } from '../net/types';
import type { DressingPiece } from '../rows/dressing';
import { mmOfTicks, ticksOfMm } from '../rows/lengths';
import { type Ticks, ticks } from '../units';
import { revealsOf } from './fit-piece';
import { type FlatBox, type FlatSize, panelBox, pieceWith, windowBox } from './panel-size';

/** A dressing piece as it lies on the flat net with its outside up: which panel, and where. */
export interface PlacedPiece extends FlatBox {
  readonly piece: DressingPiece;
  readonly panel: string;
  /** The piece of the box that the panel belongs to. */
  readonly part: string;
  /** Film lies on the inside and shows only through its opening. */
  readonly behind: boolean;
  readonly shape?: NonNullable<DressingPiece['shape']>;
}

/** Where a piece is stuck on, in ticks from the lower left corner of the net lying outside up; null for what is not stuck on a panel. */
export function placePiece(net: BoxNet, piece: DressingPiece, size: FlatSize): PlacedPiece | null {
  const { fit, placed } = piece;
  if (fit?.rule === 'on-panel') {
    const base = outsideBox(net, fit, panelBox);
    const { left, down } = revealsOf(fit);
    return (
      base && {
        piece,
        panel: base.panel,
        part: base.part,
        behind: false,
        ...size,
        // What rounding to the maker's marks takes off is shared between the two sides.
        left: ticks(base.left + left + half(base.across - left - revealsOf(fit).right - size.across)),
        bottom: ticks(base.bottom + down + half(base.up - down - revealsOf(fit).up - size.up)),
      }
    );
  }
  if (fit?.rule === 'over-window') {
    const base = outsideBox(net, fit, windowBox);
    return (
      base && {
        piece,
        panel: base.panel,
        part: base.part,
        behind: true,
        ...size,
        left: ticks(base.left - half(size.across - base.across)),
        bottom: ticks(base.bottom - half(size.up - base.up)),
      }
    );
  }
  if (!placed) return null;
  const base = outsideBox(net, placed, panelBox);
  return (
    base && {
      piece,
      panel: base.panel,
      part: base.part,
      behind: false,
      shape: piece.shape ?? 'rectangle',
      ...size,
      left: ticks(base.left + ticksOfMm(placed.leftMm)),
      bottom: ticks(base.bottom + ticksOfMm(placed.downMm)),
    }
  );
}

const half = (length: number): Ticks => ticks(Math.floor(length / 2));

/** A box of the net as it lies with its outside up: mirrored within its own piece. */
function outsideBox(
  net: BoxNet,
  { panel, part }: { readonly panel: string; readonly part?: string | undefined },
  boxOf: (net: BoxNet, panel: string, part?: string) => FlatBox | null,
): (FlatBox & { readonly panel: string; readonly part: string }) | null {
  const box = boxOf(net, panel, part);
  const piece = pieceWith(net, panel, part);
  if (!box || !piece) return null;
  return {
    ...box,
    panel: savedName(net, piece.id, panel),
    part: piece.id,
    left: ticks(piece.blank.across - box.left - box.across),
  };
}

/** How far a tag stands over the right and the upper edge of its panel; nothing each way where it lies within. */
export function overhangOf(net: BoxNet, { placed }: DressingPiece, size: FlatSize): FlatSize | null {
  const panel = placed && panelBox(net, placed.panel, placed.part);
  if (!placed || !panel) return null;
  const over = (from: number, long: Ticks, room: Ticks): Ticks =>
    ticks(Math.max(0, ticksOfMm(from) + long - room));
  const across = over(placed.leftMm, size.across, panel.across);
  const up = over(placed.downMm, size.up, panel.up);
  return across > 0 || up > 0 ? { across, up } : null;
}

/** The same tag moved back by what it stands over; one larger than its panel stays at the panel's corner. */
export function movedOnto(piece: DressingPiece, over: FlatSize): DressingPiece {
  const { placed } = piece;
  if (!placed) return piece;
  const back = (from: number, by: Ticks): number => mmOfTicks(ticks(Math.max(0, ticksOfMm(from) - by)));
  return {
    ...piece,
    placed: { ...placed, leftMm: back(placed.leftMm, over.across), downMm: back(placed.downMm, over.up) },
  };
}
