import type { PieceNet } from '../../net/types';
import { ticks } from '../../units/ticks';
import { fourLies, type Quarters, toBench, uprightIn } from '../equal/card-lie';
import { comparePlaces, type Stretch, type Stretches, shareStretches } from '../equal/exact-intervals';
import { insideAlong, type Segment, segmentOn } from '../equal/line-stretches';
import type { BenchOp } from '../types';
import { acrossBlank, type NetLine, outlineOf } from './net-lines';

/** One way to cut a slit: the card turned so that the open end, where there is one, lies at the near edge. */
export interface SlitWay {
  readonly quarters: Quarters;
  readonly op: Extract<BenchOp, { op: 'slit' }>;
}

/** Every upright or level slit with the ways it can be cut; slanted ones by their ends in the net. */
export interface SlitWork {
  readonly ways: readonly (readonly SlitWay[])[];
  readonly slanted: readonly Segment[];
}

export function slitWork(piece: PieceNet, lines: readonly NetLine[], mirrored: boolean): SlitWork {
  const outline = outlineOf(piece);
  const ways: SlitWay[][] = [];
  const slanted: Segment[] = [];
  for (const line of lines)
    for (const slit of line.slits)
      if (line.runs === 'slanted') slanted.push(segmentOn(line.carrier, slit));
      else ways.push(waysToCut(piece, line, slit, insideAlong(line.carrier, outline), mirrored));
  return { ways, slanted };
}

/** A slit that reaches the blank's edge, or waste all the way to it, is cut in from that edge; any other from stop to stop. */
function waysToCut(
  piece: PieceNet,
  line: NetLine,
  slit: Stretch,
  card: Stretches,
  mirrored: boolean,
): SlitWay[] {
  const whole = acrossBlank(line, piece);
  const isWaste = (gap: Stretch): boolean =>
    comparePlaces(gap.from, gap.to) >= 0 || shareStretches([gap], card).length === 0;
  const openAtStart = isWaste({ from: whole.from, to: slit.from });
  const openAtEnd = isWaste({ from: slit.to, to: whole.to });
  const segment = segmentOn(line.carrier, slit);
  const ways = fourLies(mirrored).flatMap((lie): SlitWay[] => {
    const upright = uprightIn(piece.blank, lie, segment.a, segment.b);
    if (!upright) return [];
    const startIsNear = toBench(piece.blank, lie, segment.a).y < toBench(piece.blank, lie, segment.b).y;
    const open = startIsNear ? openAtStart : openAtEnd;
    const op = { op: 'slit', at: upright.at, from: open ? ticks(0) : upright.from, to: upright.to } as const;
    return [{ quarters: lie.quarters, op }];
  });
  const open = ways.filter(({ op }) => op.from === 0);
  return open.length > 0 ? open : ways;
}
