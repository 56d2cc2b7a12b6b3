import type { At } from '../plane';
import { toMm } from '../units/ticks';
import { linesOf } from './lines';
import { paringsOf } from './parings';
import type { BoxNet, Curve, PieceNet } from './types';

/** What a drawing for other programs keeps apart. */
export const LAYERS = ['cut', 'score', 'slit', 'pare', 'glue'] as const;
export type Layer = (typeof LAYERS)[number];

/** A line or a counter-clockwise arc, in mm, y up. */
export interface PlainLine {
  readonly layer: Layer;
  readonly a: At;
  readonly b: At;
  readonly arc: null | { readonly centre: At; readonly radius: number };
}

/** Pieces lie side by side this far apart. source: our choice */
const GAP_MM = 10;

/** One piece among the others, its left lower corner `left` mm across. */
export interface PlainPiece {
  readonly id: string;
  readonly label: string;
  readonly left: number;
  readonly lines: readonly PlainLine[];
}

/** A box as plain lines, piece beside piece, on the layers; `across` and `up` are the whole drawing's size in mm. */
export function plainPiecesOf(box: BoxNet): {
  readonly across: number;
  readonly up: number;
  readonly pieces: readonly PlainPiece[];
} {
  let left = 0;
  const pieces = box.pieces.map((piece): PlainPiece => {
    const { id, label } = piece;
    const plain = { id, label, left, lines: pieceLines(piece, left) };
    left += toMm(piece.blank.across) + GAP_MM;
    return plain;
  });
  return { across: left - GAP_MM, up: Math.max(...box.pieces.map(({ blank }) => toMm(blank.up))), pieces };
}

/** A box with one of its pieces alone, and what to call it; null where it has no such piece. */
export function pieceAlone(
  { whole: _, ...box }: BoxNet,
  name: string,
  id: string,
): { readonly net: BoxNet; readonly name: string } | null {
  const piece = box.pieces.find((each) => each.id === id);
  return piece === undefined
    ? null
    : { net: { ...box, pieces: [piece] }, name: `${name}, ${piece.label.toLowerCase()}` };
}

function pieceLines(piece: PieceNet, shift: number): PlainLine[] {
  const at = ({ x, y }: { readonly x: number; readonly y: number }): At => [toMm(x) + shift, toMm(y)];
  const drawn = linesOf(piece).map(({ kind, from, to, curve }): PlainLine => {
    const layer = kind === 'edge' ? 'cut' : kind;
    const arc = curve === null ? undefined : piece.curves[curve];
    if (arc === undefined) return { layer, a: at(from), b: at(to), arc: null };
    const [x, y] = arc.centre;
    const ends = startOf(arc);
    return { layer, a: at(ends[0]), b: at(ends[1]), arc: { centre: at({ x, y }), radius: toMm(arc.radius) } };
  });
  const pared = paringsOf(piece).map(
    ({ a, b }): PlainLine => ({ layer: 'pare', a: at(a), b: at(b), arc: null }),
  );
  const glued = piece.joints.flatMap(({ tab }): PlainLine[] => {
    const ring = piece.faces[tab]?.ring ?? [];
    return ring.map((p, k) => ({
      layer: 'glue',
      a: at(p),
      b: at(ring[(k + 1) % ring.length] ?? p),
      arc: null,
    }));
  });
  return [...drawn, ...pared, ...glued];
}

/** A minor arc's ends in counter-clockwise order: it runs so when its centre lies on the left. */
function startOf({ a, b, centre: [x, y] }: Curve): readonly [Curve['a'], Curve['b']] {
  const left = (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > 0;
  return left ? [a, b] : [b, a];
}
