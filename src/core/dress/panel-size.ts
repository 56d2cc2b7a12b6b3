import { savedName } from '../net/saved-panel';
import type { BoxNet, Face, PieceNet, Point } from '../net/types';
import { type Ticks, ticks } from '../units';

export interface FlatSize {
  readonly across: Ticks;
  readonly up: Ticks;
}

/** A rectangle of the flat net, inside up: its lower left corner and its size. */
export interface FlatBox extends FlatSize {
  readonly left: Ticks;
  readonly bottom: Ticks;
}

/** The rectangle a saved panel fills in the flat net, score to score; null if no piece has a panel of that name. */
export const panelSize = (net: BoxNet, panel: string, part?: string): FlatSize | null =>
  sizeOf(panelBox(net, panel, part));

/** Where that rectangle lies. */
export const panelBox = (net: BoxNet, panel: string, part?: string): FlatBox | null =>
  boxRound(facesOf(net, panel, part).flatMap(({ ring }) => ring));

/** The largest opening cut into a panel; null where it is whole. */
export const windowSize = (net: BoxNet, panel: string, part?: string): FlatSize | null =>
  sizeOf(windowBox(net, panel, part));

/** Where that opening lies. */
export function windowBox(net: BoxNet, panel: string, part?: string): FlatBox | null {
  const openings = facesOf(net, panel, part)
    .flatMap(({ holes }) => holes)
    .flatMap((hole) => boxRound(hole) ?? []);
  return openings.reduce<FlatBox | null>(
    (best, each) => (best && best.across * best.up >= each.across * each.up ? best : each),
    null,
  );
}

/** The piece of the box that a panel belongs to: the one named, else the first that has it. */
export const pieceWith = (net: BoxNet, panel: string, part?: string): PieceNet | undefined =>
  net.pieces.find(
    ({ id, faces }) =>
      (part === undefined || id === part) && faces.some((face) => face.panel === savedName(net, id, panel)),
  );

function facesOf(net: BoxNet, panel: string, part?: string): readonly Face[] {
  const piece = pieceWith(net, panel, part);
  return piece?.faces.filter((face) => face.panel === savedName(net, piece.id, panel)) ?? [];
}

const sizeOf = (box: FlatBox | null): FlatSize | null => box && { across: box.across, up: box.up };

function boxRound(corners: readonly Point[]): FlatBox | null {
  if (corners.length === 0) return null;
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [left, bottom] = [ticks(Math.min(...xs)), ticks(Math.min(...ys))];
  return {
    left,
    bottom,
    across: ticks(Math.max(...xs) - left),
    up: ticks(Math.max(...ys) - bottom),
  };
}
