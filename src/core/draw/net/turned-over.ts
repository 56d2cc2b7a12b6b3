import type { PieceNet, Point } from '../../net/types';
import { ticks } from '../../units/ticks';

/** The piece as it lies with its outside face up: mirrored left to right, valleys become mountains. Turning over twice changes nothing. */
export function turnOver(piece: PieceNet): PieceNet {
  const { across } = piece.blank;
  const over = ({ x, y }: Point): Point => ({ x: ticks(across - x), y });
  // A mirror runs rings the other way round; reversing them keeps corners counter-clockwise.
  const ringOver = (ring: readonly Point[]): readonly Point[] => ring.map(over).reverse();
  return {
    ...piece,
    faces: piece.faces.map((face) => ({
      ...face,
      ring: ringOver(face.ring),
      holes: face.holes.map(ringOver),
    })),
    edges: piece.edges.map((edge) => ({
      ...edge,
      a: over(edge.b),
      b: over(edge.a),
      foldDeg: 0 - edge.foldDeg,
    })),
    hinges: piece.hinges.map((hinge) => ({
      ...hinge,
      a: over(hinge.b),
      b: over(hinge.a),
      restDeg: 0 - hinge.restDeg,
    })),
    curves: piece.curves.map((curve) => ({
      ...curve,
      a: over(curve.b),
      b: over(curve.a),
      centre: [across - curve.centre[0], curve.centre[1]],
    })),
    waste: piece.waste.map(ringOver),
  };
}
