import type { PieceNet } from '../../net/types';
import { comparePlaces, cutStretches, shareStretches } from '../equal/exact-intervals';
import { type Segment, segmentOn } from '../equal/line-stretches';
import { acrossBlank, type NetLine, outlineOf, sparedAlong } from './net-lines';

/** A straight score that the fence can measure: its whole line on the blank, and the stretches pressed (null: edge to edge). */
export interface ScoreRun {
  readonly line: Segment;
  readonly spans: readonly (Segment | null)[];
}

/**
 * Upright and level scores as runs. A run goes on through waste, slit lines and edges, where a score does no harm, from score to score and
 * out to the blank's edge; it stops only where card must be spared.
 */
export function scoreRuns(piece: PieceNet, lines: readonly NetLine[]): readonly ScoreRun[] {
  const outline = outlineOf(piece);
  return lines
    .filter((line) => line.runs !== 'slanted' && line.scores.length > 0)
    .map((line) => {
      const whole = acrossBlank(line, piece);
      const free = cutStretches([whole], sparedAlong(line, outline));
      return {
        line: segmentOn(line.carrier, whole),
        spans: free.flatMap((part) => runIn(part, line, whole)),
      };
    });
}

type Part = ReturnType<typeof acrossBlank>;

function runIn(part: Part, line: NetLine, whole: Part): readonly (Segment | null)[] {
  const scored = shareStretches(line.scores, [part]);
  const first = scored[0];
  const last = scored.at(-1);
  if (!first || !last) return [];
  const atStart = comparePlaces(part.from, whole.from) === 0;
  const atEnd = comparePlaces(part.to, whole.to) === 0;
  if (atStart && atEnd) return [null];
  return [
    segmentOn(line.carrier, { from: atStart ? whole.from : first.from, to: atEnd ? whole.to : last.to }),
  ];
}

/** Slanted scores as segments, drawn by ruler. */
export const slantedScores = (lines: readonly NetLine[]): readonly Segment[] =>
  lines
    .filter((line) => line.runs === 'slanted')
    .flatMap((line) => line.scores.map((part) => segmentOn(line.carrier, part)));
