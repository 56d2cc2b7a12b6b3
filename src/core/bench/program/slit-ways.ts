import { tabEndOf } from '../../net/tab-end';
import type { PieceNet } from '../../net/types';
import { ticks } from '../../units/ticks';
import { fourLies, type Quarters, sizeAsItLies, toBench, uprightIn } from '../equal/card-lie';
import { comparePlaces, type Stretch, type Stretches, shareStretches } from '../equal/exact-intervals';
import { insideAlong, type Segment, segmentOn } from '../equal/line-stretches';
import { isAtFence } from '../first-lie';
import type { BenchOp } from '../types';
import { acrossBlank, type NetLine, outlineOf } from './net-lines';

/** One way to cut a slit: the card turned so that the open end, where there is one, lies at the near edge if it may. */
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

/**
 * A slit that reaches the blank's edge, or waste all the way to it, is cut in from that edge, or up to it; any other from stop to stop. Like
 * the score it goes on from, it is measured from the edge opposite the tab.
 */
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
    const [openNear, openFar] = startIsNear ? [openAtStart, openAtEnd] : [openAtEnd, openAtStart];
    const from = openNear ? ticks(0) : upright.from;
    const to = openFar && !openNear ? sizeAsItLies(piece.blank, lie).up : upright.to;
    return [{ quarters: lie.quarters, op: { op: 'slit', at: upright.at, from, to } }];
  });
  const tabEnd = tabEndOf(piece);
  const fromBody = ways.filter(({ quarters }) => !isAtFence(tabEnd, { quarters, mirrored }));
  const open = fromBody.filter(({ op }) => op.from === 0);
  return open.length > 0 ? open : fromBody;
}
