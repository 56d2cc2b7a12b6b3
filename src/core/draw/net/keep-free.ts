import { closingStates, posesOf } from '../../fold';
import type { PieceNet } from '../../net/types';
import { toMm } from '../../units/ticks';
import type { At } from '../strokes/types';
import { ringOnto } from './panel-way';

/** A part of a face's outside that nobody sees on the closed box, in flat millimetres, inside face up. */
export interface HiddenArea {
  readonly face: number;
  readonly ring: readonly At[];
  /** Glued, so that ink and varnish would also loosen the joint; else only covered. */
  readonly glued: boolean;
}

const LEAST_MM2 = 1; // a sliver from rounding is no area

/** Where artwork must not go on the outside: under glue, and under whatever is laid over it in closing. */
export function hiddenAreas(piece: PieceNet): readonly HiddenArea[] {
  const poses = posesOf(piece, closingStates(piece).at(-1) ?? []);
  const whole = (face: number): readonly At[] =>
    piece.faces[face]!.ring.map(({ x, y }): At => [toMm(x), toMm(y)]);
  const under = (face: number, cover: number, glued: boolean): HiddenArea[] => {
    const over = ringOnto(piece, poses, cover, face);
    if (!over) return [];
    const ring = isConvex(whole(face)) ? clipTo(over, whole(face)) : whole(face);
    return areaOf(ring) < LEAST_MM2 ? [] : [{ face, ring, glued }];
  };
  const joints = piece.joints.flatMap(({ tab, target, lap }): HiddenArea[] =>
    // A tab inside a wall hides its own outside; one outside hides the wall below it.
    lap === 'inside' ? [{ face: tab, ring: whole(tab), glued: true }] : under(target, tab, true),
  );
  const layers = piece.overlaps.flatMap((group) =>
    group.flatMap((face, depth) =>
      group.slice(depth + 1).flatMap((cover) => {
        const samePanel = piece.faces[face]!.panel === piece.faces[cover]!.panel;
        return samePanel ? [] : under(face, cover, false);
      }),
    ),
  );
  return withoutTwins([...joints, ...layers]);
}

/** A face that is wholly hidden by glue is not told of again as covered. */
const withoutTwins = (areas: readonly HiddenArea[]): readonly HiddenArea[] =>
  areas.filter(
    (area, at) =>
      !areas.some(
        (other, i) =>
          i !== at &&
          other.face === area.face &&
          (other.glued && !area.glued ? true : i < at) &&
          areaOf(clipTo(area.ring, other.ring)) > 0.98 * areaOf(area.ring),
      ),
  );

const crossOf = ([ax, ay]: At, [bx, by]: At, [px, py]: At): number =>
  (bx - ax) * (py - ay) - (by - ay) * (px - ax);

export const areaOf = (ring: readonly At[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = ring[(i + 1) % ring.length]!;
      return sum + x * nextY - nextX * y;
    }, 0),
  ) / 2;

const isConvex = (ring: readonly At[]): boolean =>
  ring.every(
    (point, i) => crossOf(point, ring[(i + 1) % ring.length]!, ring[(i + 2) % ring.length]!) >= -1e-6,
  );

/** What a ring shares with a convex one that runs counter-clockwise. source: Sutherland and Hodgman 1974, from memory. */
function clipTo(ring: readonly At[], window: readonly At[]): readonly At[] {
  let kept = ring;
  window.forEach((a, i) => {
    const b = window[(i + 1) % window.length]!;
    const before = kept;
    kept = before.flatMap((point, at) => {
      const next = before[(at + 1) % before.length]!;
      const [here, there] = [crossOf(a, b, point), crossOf(a, b, next)];
      const crossing = here >= 0 !== there >= 0;
      const share = here / (here - there);
      const meet: At = [point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])];
      return [...(here >= 0 ? [point] : []), ...(crossing ? [meet] : [])];
    });
  });
  return kept;
}
