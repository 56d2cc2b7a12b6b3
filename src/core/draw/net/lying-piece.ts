import { type Lie, placeAtBench } from '../../bench';
import type { PieceNet, Point } from '../../net/types';
import { ticks } from '../../units/ticks';

/** Inside up, as the net itself is. */
export const UPRIGHT: Lie = { quarters: 0, mirrored: false };
/** Turned over, with its top still at the top. */
export const TURNED_OVER: Lie = { quarters: 0, mirrored: true };

/** A piece as it lies: turned over, its valleys are mountains. Half turns only, so that its blank keeps its two lengths. */
export function layPiece(piece: PieceNet, lie: Lie): PieceNet {
  const over = ({ x, y }: Point): Point => {
    const [left, above] = placeAtBench(piece.blank, lie, [x, y]);
    return { x: ticks(left), y: ticks(above) };
  };
  // A mirror runs rings the other way round; reversing them keeps corners counter-clockwise.
  const ringOver = (ring: readonly Point[]): readonly Point[] =>
    lie.mirrored ? ring.map(over).reverse() : ring.map(over);
  const ends = <Line extends { readonly a: Point; readonly b: Point }>(line: Line): Line =>
    lie.mirrored
      ? { ...line, a: over(line.b), b: over(line.a) }
      : { ...line, a: over(line.a), b: over(line.b) };
  const fold = (deg: number): number => (lie.mirrored ? 0 - deg : deg);
  return {
    ...piece,
    faces: piece.faces.map((face) => ({
      ...face,
      ring: ringOver(face.ring),
      holes: face.holes.map(ringOver),
    })),
    edges: piece.edges.map((edge) => ({ ...ends(edge), foldDeg: fold(edge.foldDeg) })),
    hinges: piece.hinges.map((hinge) => ({ ...ends(hinge), restDeg: fold(hinge.restDeg) })),
    curves: piece.curves.map((curve) => ({
      ...ends(curve),
      centre: placeAtBench(piece.blank, lie, curve.centre),
    })),
    waste: piece.waste.map(ringOver),
  };
}
