import { type Carrier, carrierKey } from '../../net/carrier';
import type { NetEdge, PieceNet } from '../../net/types';
import {
  cutStretches,
  mergeStretches,
  type Stretch,
  type Stretches,
  stretch,
} from '../equal/exact-intervals';
import { insideAlong, lineOf, stretchOf } from '../equal/line-stretches';

/** Everything straight that the net has on one line, so that it can be made in one go. */
export interface NetLine {
  readonly carrier: Carrier;
  /** `upright` runs along y, `level` along x, as the net lies. */
  readonly runs: 'upright' | 'level' | 'slanted';
  readonly scores: Stretches;
  readonly slits: Stretches;
}

/** The straight slits of a piece and those of its scores that are wanted, line by line. */
export function netLines(piece: PieceNet, wanted: (score: NetEdge) => boolean): readonly NetLine[] {
  const lines = new Map<string, NetEdge[]>();
  for (const edge of piece.edges) {
    if (edge.curve !== null || (edge.kind !== 'slit' && !(edge.kind === 'score' && wanted(edge)))) continue;
    const key = carrierKey(lineOf(edge));
    const known = lines.get(key);
    if (known) known.push(edge);
    else lines.set(key, [edge]);
  }
  return [...lines.values()].flatMap((edges) => {
    const [first] = edges;
    if (!first) return [];
    const carrier = lineOf(first);
    const along = (kind: 'score' | 'slit') =>
      mergeStretches(edges.filter((edge) => edge.kind === kind).map((edge) => stretchOf(carrier, edge)));
    const runs = carrier.dx === 0 ? 'upright' : carrier.dy === 0 ? 'level' : 'slanted';
    return [{ carrier, runs, scores: along('score'), slits: along('slit') }];
  });
}

/** The card's outline and holes, as the net has them. */
export const outlineOf = (piece: PieceNet): readonly NetEdge[] =>
  piece.edges.filter((edge) => edge.kind === 'edge' || edge.kind === 'cut');

/** Where a line may not be touched: card that is neither to be scored nor slit there. */
export const sparedAlong = (line: NetLine, outline: readonly NetEdge[]): Stretches =>
  cutStretches(cutStretches(insideAlong(line.carrier, outline), line.scores), line.slits);

/** The whole length of an upright or level line on the blank. */
export const acrossBlank = ({ runs }: NetLine, { blank }: PieceNet): Stretch =>
  stretch(0, runs === 'upright' ? blank.up : blank.across);
