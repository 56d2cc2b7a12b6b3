import type { Face, Joint, PieceNet, Point } from '../../net/types';
import { type Ticks, ticks } from '../../units';
import type { TapeStrip } from '../event/types';

/** Strips on a joint under load; one on any other. source: common practice, no source */
export const STRIPS_UNDER_LOAD = 2;

/** A flap glued onto a narrower flap is taped only where they lie on one another; a wall or base is taken to be wide enough. */
const FLAPS: readonly Face['role'][] = ['bottomFlap', 'dustFlap', 'lockFlap', 'tuck', 'endFlap'];

type Line = readonly [Point, Point];

const lengthOf = ([a, b]: Line): number => Math.hypot(b.x - a.x, b.y - a.y);

/** Tape for every glue joint of a piece: as long as the score the glued panel hangs on, on as many strips as the joint needs. */
export const tapeJoints = (piece: PieceNet, underLoad = STRIPS_UNDER_LOAD): readonly TapeStrip[] =>
  piece.joints.map((joint) => tapeJoint(piece, joint, underLoad));

function tapeJoint(piece: PieceNet, joint: Joint, underLoad: number): TapeStrip {
  const tab = piece.faces[joint.tab]!;
  const target = piece.faces[joint.target]!;
  const base = baseLine(piece, joint.tab);
  const along = Math.ceil(lengthOf(base));
  const length = FLAPS.includes(target.role)
    ? Math.min(along, Math.ceil(lengthOf(baseLine(piece, joint.target))))
    : along;
  return {
    panel: tab.panel,
    onto: target.panel,
    length: ticks(length),
    strips: joint.carries ? underLoad : 1,
    depth: depthBeyond(tab, base),
  };
}

/** The line a face hangs on; the longest edge of a face that hangs on none. */
function baseLine(piece: PieceNet, index: number): Line {
  const hinge = piece.hinges.find(({ child }) => child === index);
  if (hinge) return [hinge.a, hinge.b];
  const { ring } = piece.faces[index]!;
  const edges = ring.map((point, i): Line => [point, ring[(i + 1) % ring.length]!]);
  return edges.reduce((longest, edge) => (lengthOf(edge) > lengthOf(longest) ? edge : longest));
}

/** How far a face reaches from the line it hangs on. */
function depthBeyond({ ring }: Face, base: Line): Ticks {
  const [a, b] = base;
  const cross = ring.map((p) => Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)));
  return ticks(Math.floor(Math.max(...cross) / Math.max(1, lengthOf(base))));
}
