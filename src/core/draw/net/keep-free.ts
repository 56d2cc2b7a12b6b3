import { closingStates, posesOf } from '../../fold';
import { ringOnto } from '../../fold/panel-way';
import type { PieceNet } from '../../net/types';
import { type At, areaOf, clipTo, isConvex } from '../../plane';
import { toMm } from '../../units/ticks';

/** A part of a face's outside that nobody sees on the closed box, in flat millimeters, inside face up. */
export interface HiddenArea {
  readonly face: number;
  readonly ring: readonly At[];
  /** Glued, so that ink and varnish would also loosen the joint; else only covered. */
  readonly glued: boolean;
}

const LEAST_MM2 = 1; // a sliver from rounding is no area
const STRAIGHT = 1e-6; // twice an area, mm²: what rounding takes off a straight edge

/** Where artwork must not go on the outside: under glue, and under whatever is laid over it in closing. */
export function hiddenAreas(piece: PieceNet): readonly HiddenArea[] {
  const poses = posesOf(piece, closingStates(piece).at(-1) ?? []);
  const whole = (face: number): readonly At[] =>
    piece.faces[face]!.ring.map(({ x, y }): At => [toMm(x), toMm(y)]);
  const under = (face: number, cover: number, glued: boolean): HiddenArea[] => {
    const over = ringOnto(piece, poses, cover, face);
    if (!over) return [];
    const ring = isConvex(whole(face), STRAIGHT) ? clipTo(over, whole(face)) : whole(face);
    return Math.abs(areaOf(ring)) < LEAST_MM2 ? [] : [{ face, ring, glued }];
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
          Math.abs(areaOf(clipTo(area.ring, other.ring))) > 0.98 * Math.abs(areaOf(area.ring)),
      ),
  );
