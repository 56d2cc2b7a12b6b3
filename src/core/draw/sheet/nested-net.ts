import { outerRing, ringsOf } from '../../net/outline';
import { pointAt } from '../../net/point';
import type { BoxNet, PieceNet, Point } from '../../net/types';
import { type At, atOf, boxOf, type Ring } from '../../plane';
import { type Nest, type NestedPart, type SheetPaper, turnCorner } from '../../yield';

/** One piece of a box nested on a sheet, with all that drawing and exporting it needs. */
export interface NestedSheet {
  readonly title: string;
  readonly net: BoxNet;
  readonly piece: PieceNet;
  readonly nest: Nest;
  readonly sheet: SheetPaper;
}

/** The outline that a piece is cut along, its openings left out. */
export const outlineOfPiece = ({ edges }: PieceNet): Ring =>
  outerRing(ringsOf(edges.filter(({ right }) => right === null))).map(atOf);

/**
 * All copies of a piece on one sheet as a single piece as large as the sheet, its edges all to be cut: for everything that draws, prints or
 * exports a net. Folding it makes no sense, so hinges, seams and closing are left out.
 */
export function netOfNest(piece: PieceNet, parts: readonly NestedPart[], paper: SheetPaper): PieceNet {
  const outline = outlineOfPiece(piece);
  const copies = parts.map((part, copy) => copyPiece(piece, outline, part, copy));
  return {
    ...piece,
    blank: { across: paper.across, up: paper.up },
    faces: copies.flatMap(({ faces }) => faces),
    edges: copies.flatMap(({ edges }) => edges),
    curves: copies.flatMap(({ curves }) => curves),
    joints: copies.flatMap(({ joints }) => joints),
    hinges: [],
    seams: [],
    overlaps: [],
    closing: [],
    waste: [],
    shell: [],
  };
}

function copyPiece(
  piece: PieceNet,
  outline: Ring,
  { quarter, x, y }: NestedPart,
  copy: number,
): Pick<PieceNet, 'faces' | 'edges' | 'curves' | 'joints'> {
  const { left, bottom } = boxOf(outline.map((corner) => turnCorner(corner, quarter)));
  const move = (corner: At): At => {
    const [across, up] = turnCorner(corner, quarter);
    return [across - left + x, up - bottom + y];
  };
  const put = (corner: Point): Point => pointAt(...move(atOf(corner)));
  const face = (index: number) => index + copy * piece.faces.length;
  return {
    faces: piece.faces.map((each) => ({
      ...each,
      ring: each.ring.map(put),
      holes: each.holes.map((hole) => hole.map(put)),
    })),
    edges: piece.edges.map((edge) => ({
      ...edge,
      a: put(edge.a),
      b: put(edge.b),
      kind: edge.kind === 'edge' ? 'cut' : edge.kind,
      left: face(edge.left),
      right: edge.right === null ? null : face(edge.right),
      hinge: null,
      curve: edge.curve === null ? null : edge.curve + copy * piece.curves.length,
    })),
    curves: piece.curves.map((curve) => ({
      ...curve,
      a: put(curve.a),
      b: put(curve.b),
      centre: move(curve.centre),
    })),
    joints: piece.joints.map((joint) => ({ ...joint, tab: face(joint.tab), target: face(joint.target) })),
  };
}
