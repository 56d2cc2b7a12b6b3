import type { PieceNet, Point } from '../../net/types';
import { type Ticks, ticks } from '../../units';
import { placeAtBench } from '../equal/card-lie';
import { drawnLie } from '../first-lie';

/** A piece of the way from the card's edge to a line: within one panel, or over card that falls away (null). */
export interface Stretch {
  readonly panel: string | null;
  readonly length: Ticks;
}

interface Asked {
  /** Measured from the top, else from the left. */
  readonly level: boolean;
  /** How far from that edge the line lies, and between which two distances along it, in ticks. */
  readonly at: Ticks;
  readonly from: Ticks;
  readonly to: Ticks;
  readonly faceUp: 'inside' | 'outside';
}

/** Where along a line the way to it is looked at; the first that crosses panels on whole ticks counts. source: our own */
const TRIED = [1 / 2, 1 / 4, 3 / 4, 1 / 10, 9 / 10];

/**
 * The panels from the card's edge to an upright or level line, straight across, and the panel that follows it. Null where every way crosses
 * a slanted edge, so that its parts are no whole ticks.
 */
export function panelsAcross(
  piece: PieceNet,
  { level, at, from, to, faceUp }: Asked,
): { readonly before: readonly Stretch[]; readonly after: string | null } | null {
  const { up } = piece.blank;
  const lie = drawnLie(piece, faceUp);
  /** Distance from the edge that is measured from, then along it. */
  const turn = ({ x, y }: Point): readonly [number, number] => {
    const [left, above] = placeAtBench(piece.blank, lie, [x, y]);
    return level ? [up - above, left] : [left, up - above];
  };
  for (const share of TRIED) {
    const crossed = piece.faces
      .flatMap(({ panel, ring }) => spansAt(ring.map(turn), from + share * (to - from), panel))
      .sort((a, b) => a.from - b.from);
    const before = stretchesTo(crossed, at);
    if (before) return { before, after: crossed.find((span) => span.from === at)?.panel ?? null };
  }
  return null;
}

interface Span {
  readonly panel: string;
  readonly from: number;
  readonly to: number;
}

/** Where a way at `along` runs within a ring. */
function spansAt(ring: readonly (readonly [number, number])[], along: number, panel: string): Span[] {
  const crossings = ring
    .flatMap(([u, v], corner) => {
      const [nextU, nextV] = ring[(corner + 1) % ring.length] ?? [u, v];
      return v < along === nextV < along ? [] : [u + ((along - v) / (nextV - v)) * (nextU - u)];
    })
    .sort((a, b) => a - b);
  return crossings.flatMap((from, place) => {
    const to = crossings[place + 1];
    return place % 2 === 0 && to !== undefined ? [{ panel, from, to }] : [];
  });
}

/** The spans up to a place, end to end; null unless all of them begin and end on whole ticks and the last ends there. */
function stretchesTo(spans: readonly Span[], at: number): Stretch[] | null {
  const stretches: { panel: string | null; length: number }[] = [];
  let reached = 0;
  for (const { panel, from, to } of spans) {
    if (from >= at) break;
    if (!Number.isInteger(from) || !Number.isInteger(to) || to > at || from < reached) return null;
    if (from > reached) stretches.push({ panel: null, length: from - reached });
    const last = stretches.at(-1);
    // A bent panel is several faces.
    if (last?.panel === panel && from === reached) last.length += to - from;
    else stretches.push({ panel, length: to - from });
    reached = to;
  }
  if (reached < at) stretches.push({ panel: null, length: at - reached });
  return stretches.map(({ panel, length }) => ({ panel, length: ticks(length) }));
}
