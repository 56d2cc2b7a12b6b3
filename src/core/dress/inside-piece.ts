import { panelWays } from '../fold/panel-way';
import type { BoxNet } from '../net/types';
import type { At } from '../plane';
import type { DressingPiece } from '../rows/dressing';
import { toMm } from '../units';
import { type FlatSize, pieceWith, windowBox } from './panel-size';

/** Something that lies on the inside of a panel: its corners on the flat net with the inside up, in millimeters. */
export interface InsidePiece {
  /** The piece of the box that the panel belongs to. */
  readonly part: string;
  readonly panel: string;
  readonly ring: readonly At[];
}

/** Where film or a liner goes, which the closed box does not show; null for all that is put on the outside, and where there is no back. */
export function insidePiece(net: BoxNet, piece: DressingPiece, size: FlatSize): InsidePiece | null {
  const [across, up] = [toMm(size.across), toMm(size.up)];
  if (piece.fit?.rule === 'over-window') {
    const { panel, part } = piece.fit;
    const opening = windowBox(net, panel, part);
    const owner = pieceWith(net, panel, part);
    if (!opening || !owner) return null;
    const middle: At = [
      toMm(opening.left) + toMm(opening.across) / 2,
      toMm(opening.bottom) + toMm(opening.up) / 2,
    ];
    return { part: owner.id, panel, ring: rectangle(middle, [0, 1], across, up) };
  }
  // A liner of its own size goes behind the contents too.
  const isLiner = piece.kind === 'liner' && !piece.fit && !piece.placed;
  if (piece.fit?.rule !== 'behind' && !isLiner) return null;
  const owner = net.pieces.find(({ lid, faces }) => !lid && faces.some(({ panel }) => panel === BACK));
  const face = owner?.faces.findIndex(({ panel }) => panel === BACK) ?? -1;
  const way = owner && panelWays(owner)[face];
  const ring = owner?.faces[face]?.ring.map(({ x, y }): At => [toMm(x), toMm(y)]);
  if (!owner || !ring || way?.stands !== 'upright') return null;
  const [ux, uy] = way.up;
  const along = ring.map(([x, y]) => x * ux + y * uy);
  const beside = ring.map(([x, y]) => x * uy - y * ux);
  const foot = Math.min(...along);
  const mid = (Math.min(...beside) + Math.max(...beside)) / 2;
  const height = foot + up / 2;
  return {
    part: owner.id,
    panel: BACK,
    ring: rectangle([height * ux + mid * uy, height * uy - mid * ux], way.up, across, up),
  };
}

/** The wall a liner stands against. */
const BACK = 'back';

/** Round a middle, `up` along a unit vector and `across` square to it. */
function rectangle([x, y]: At, [ux, uy]: At, across: number, up: number): readonly At[] {
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([beside = 0, along = 0]): At => {
    const [b, a] = [(beside * across) / 2, (along * up) / 2];
    return [x + a * ux + b * uy, y + a * uy - b * ux];
  });
}
