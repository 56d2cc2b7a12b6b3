import type { PieceDraft, Place } from '../../core/draft/draft';
import { DIRECTIONS, type Side } from '../../core/draft/sides';
import type { NamedSide } from '../../core/net/lay-piece';

/** Which way an edge faces: out of its panel, whose ring runs counter-clockwise. */
const outOf = ({ a, b }: NamedSide): readonly [number, number] => {
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return [(b.y - a.y) / long, -(b.x - a.x) / long];
};

const facing = (side: NamedSide, way: Side): number => {
  const [x, y] = outOf(side);
  return x * DIRECTIONS[way][0] + y * DIRECTIONS[way][1];
};

/**
 * Where an arrow leads: from a panel to its edge on that side; from an edge on to the panel beyond it, back into its own panel, or round to
 * another edge of it.
 */
export function nextPlace(
  piece: PieceDraft,
  sides: readonly NamedSide[],
  place: Place,
  way: Side,
): Place | null {
  const { panel, edge } = place;
  const here = place.piece;
  const own = sides.filter((side) => side.panel === panel);
  if (edge === undefined) {
    const best = [...own].sort((p, q) => facing(q, way) - facing(p, way))[0];
    if (best !== undefined && facing(best, way) > 0.5) return { piece: here, panel, edge: best.edge };
    // the side it hangs by is an edge of its parent
    const on = piece.panels[panel]?.on?.split('.');
    return on?.[0] === undefined ? null : { piece: here, panel: on[0], ...(on[1] ? { edge: on[1] } : {}) };
  }
  const side = own.find((each) => each.edge === edge);
  if (side === undefined) return { piece: here, panel };
  if (facing(side, way) < -0.5) return { piece: here, panel };
  if (facing(side, way) > 0.5) {
    const beyond = Object.entries(piece.panels).find(([, { on }]) => on === `${panel}.${edge}`)?.[0];
    return beyond === undefined ? null : { piece: here, panel: beyond };
  }
  const round = [...own].sort((p, q) => facing(q, way) - facing(p, way))[0];
  return round === undefined || facing(round, way) < 0.5 ? null : { piece: here, panel, edge: round.edge };
}
