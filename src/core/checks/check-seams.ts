import { type ClosedPiece, distance, FLAT, type FoldedFace, placeOf, type Vector } from '../fold';
import type { NetEdge } from '../net/types';
import { toMm } from '../units/ticks';
import { asTicks, type Finding, wordsOf } from './finding';

/** Edges that must meet when closed: the declared seams, and every crease or bend that the fold tree does not turn about. */
export function checkSeams(closed: ClosedPiece): Finding[] {
  const { piece, toleranceMm } = closed;
  return seamsApart(closed)
    .filter(({ apart }) => apart > toleranceMm)
    .map(({ one, other, apart }) => ({
      code: 'seam-gapes',
      severity: 'stop',
      where: piece.faces[one]?.panel ?? '',
      facts: { one: wordsOf(piece, one), other: wordsOf(piece, other), apart: asTicks(apart) },
      says: 'The {one} and the {other} are {apart} apart where they should meet.',
      remedy: 'The panels around the box don’t add up. Check their sizes.',
    }));
}

/** How far each such pair of edges is from meeting, mm, beyond the gap it is meant to have; by the faces on either side. */
export function seamsApart({
  piece,
  faces,
}: ClosedPiece): readonly { readonly one: number; readonly other: number; readonly apart: number }[] {
  const pairs: { one: number; other: number; apart: number }[] = [];
  const report = (one: number, other: number, apart: number) => pairs.push({ one, other, apart });
  for (const seam of piece.seams) {
    const [a, b] = [piece.edges[seam.a], piece.edges[seam.b]];
    const [one, other] = seam.faces;
    if (a === undefined || b === undefined) continue;
    report(
      one,
      other,
      Math.max(0, edgesApart(endsOf(a, faces[one]), endsOf(b, faces[other])) - toMm(seam.gap)),
    );
  }
  for (const edge of piece.edges) {
    if (edge.right === null || edge.hinge !== null || (edge.kind !== 'score' && edge.kind !== 'join'))
      continue;
    report(
      edge.left,
      edge.right,
      edgesApart(endsOf(edge, faces[edge.left]), endsOf(edge, faces[edge.right])),
    );
  }
  return pairs;
}

type Ends = readonly [Vector, Vector];

const endsOf = ({ a, b }: NetEdge, face: FoldedFace | undefined): Ends => {
  const pose = face?.pose ?? FLAT;
  return [placeOf(pose, toMm(a.x), toMm(a.y)), placeOf(pose, toMm(b.x), toMm(b.y))];
};

/** The farther of two pairs of ends, taken the way round that fits better. */
const edgesApart = ([a, b]: Ends, [c, d]: Ends): number =>
  Math.min(Math.max(distance(a, c), distance(b, d)), Math.max(distance(a, d), distance(b, c)));
