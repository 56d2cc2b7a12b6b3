import type { Carrier } from '../../net/carrier';
import { type BenchCard, edgesOfCard } from './bench-card';
import type { CardPlace } from './card-lie';
import { runsAlong } from './card-outline';
import { type Place, shareStretches } from './exact-intervals';
import { insideAlong, type LaidSegment, type Segment } from './line-stretches';

/** The parts of a score or slit that lie on what is left of the card. For drawing only: places are rounded to doubles. */
export const partsOnCard = (
  card: BenchCard,
  { line, stretch }: LaidSegment,
): readonly (readonly [CardPlace, CardPlace])[] =>
  shareStretches([stretch], insideAlong(line, edgesOfCard(card))).map(({ from, to }) => [
    placeOn(line, from),
    placeOn(line, to),
  ]);

/** The point of a line at a place along it, as `alongOf` measures. */
function placeOn({ dx, dy, offset }: Carrier, { n, d }: Place): CardPlace {
  const along = Number(n) / Number(d);
  if (Math.abs(dx) >= Math.abs(dy)) return [along, (offset + dy * along) / dx];
  const y = dy > 0 ? along : -along;
  return [(dx * y - offset) / dy, y];
}

/** Edges of a card that it had not before: what was cut in between. */
export function newEdges(before: BenchCard, after: BenchCard): readonly Segment[] {
  const known = edgesOfCard(before);
  return edgesOfCard(after).filter((edge) => !runsAlong(known, edge));
}
