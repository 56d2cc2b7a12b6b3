import type { PieceNet } from '../net/types';
import type { At } from '../plane';
import { TICKS_PER_MM, toMm } from '../units/ticks';
import { type FoldedFace, foldPiece } from './fold-piece';

/** A piece folded to its closed state, with how closely it has to close. Thin card: the caliper enters by lifting layers only. */
export interface ClosedPiece {
  readonly piece: PieceNet;
  readonly faces: readonly FoldedFace[];
  readonly toleranceMm: number;
}

/** Closing tolerance where every point is on the maker's grid, and where slanted or curved lines round points to ticks. source: our choice, a hundredth and a twentieth of a millimeter */
const ON_GRID = 4; // ticks
const ROUNDED = 16; // ticks

/** How closely a piece has to close, mm. */
export function closingTolerance(piece: PieceNet): number {
  const square = piece.edges.every(
    ({ a, b, kind, curve }) => a.x === b.x || a.y === b.y || (kind === 'cut' && curve !== null),
  );
  return (square ? ON_GRID : ROUNDED) / TICKS_PER_MM;
}

export const closePiece = (piece: PieceNet): ClosedPiece => ({
  piece,
  faces: foldPiece(piece),
  toleranceMm: closingTolerance(piece),
});

/** A face's ring in millimeters, flat. */
export const flatRing = (piece: PieceNet, face: number): readonly At[] =>
  (piece.faces[face]?.ring ?? []).map(({ x, y }): At => [toMm(x), toMm(y)]);
