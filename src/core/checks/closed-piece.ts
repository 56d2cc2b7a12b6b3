import { type FoldedFace, foldPiece } from '../fold';
import type { PieceNet } from '../net/types';
import { roundToTick, TICKS_PER_MM, type Ticks, toMm } from '../units/ticks';
import type { At } from './planar';

/** A piece folded to its closed state, with how closely it has to close. Thin card: the caliper enters by lifting layers only. */
export interface ClosedPiece {
  readonly piece: PieceNet;
  readonly faces: readonly FoldedFace[];
  readonly toleranceMm: number;
}

/** Closing tolerance where every point is on the maker's grid, and where slanted or curved lines round points to ticks. source: our choice, a hundredth and a twentieth of a millimetre */
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

/** A face's ring in millimetres, flat. */
export const flatRing = (piece: PieceNet, face: number): readonly At[] =>
  (piece.faces[face]?.ring ?? []).map(({ x, y }): At => [toMm(x), toMm(y)]);

/** Longer than any card. source: our choice, ten metres */
const BEYOND_ANY_CARD = 10_000; // mm

/** Millimetres off a folded box as a length for a finding. Panels shrunk to nothing have no distances: those come as 0 or ten metres. */
export const asTicks = (mm: number): Ticks =>
  roundToTick(
    (Number.isNaN(mm) ? 0 : Math.max(-BEYOND_ANY_CARD, Math.min(BEYOND_ANY_CARD, mm))) * TICKS_PER_MM,
  );

/** `frontLeftTab` as a maker says it: front left tab. */
export const panelWords = (panel: string): string =>
  panel.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

export const wordsOf = (piece: PieceNet, face: number): string => panelWords(piece.faces[face]?.panel ?? '');
