import { inches, type Ticks, ticks } from '../units';
import type { Face, Joint, PieceNet, Point } from './types';

/** Strips of double-sided tape for one glue joint: so many, each so long, on a panel that reaches `depth` beyond its score. */
export interface JointTape {
  readonly panel: string;
  readonly onto: string;
  readonly length: Ticks;
  readonly strips: number;
  readonly depth: Ticks;
  /** Tape does not fit there. */
  readonly glueOnly: boolean;
}

/** Strips on a joint under load; one on any other. source: common practice, no source */
const STRIPS_UNDER_LOAD = 2;

/** A flap glued onto a narrower flap is taped only where they lie on one another; a wall or base is taken to be wide enough. */
const FLAPS: readonly Face['role'][] = ['bottomFlap', 'dustFlap', 'lockFlap', 'tuck', 'endFlap'];

type Line = readonly [Point, Point];

const lengthOf = ([a, b]: Line): number => Math.hypot(b.x - a.x, b.y - a.y);

/** Tape is bought this wide most often. source: common practice, no source */
const USUAL_TAPE = inches(0, 1, 4);

/**
 * Tape for every glue joint of a piece: as long as the score the glued panel hangs on, on as many strips as the joint needs. A bent panel is one
 * joint, however many facets draw it.
 */
export function tapeJoints(piece: PieceNet, underLoad = STRIPS_UNDER_LOAD): readonly JointTape[] {
  const strips = new Map<string, JointTape>();
  for (const joint of piece.joints) {
    const strip = tapeJoint(piece, joint, underLoad);
    const key = `${strip.panel}/${strip.onto}`;
    const facet = strips.get(key);
    strips.set(key, facet ? besideFacet(facet, strip) : strip);
  }
  return [...strips.values()];
}

/** Facets of a bent tab lie one beyond the other: one strip, along the longest of them. */
const besideFacet = (one: JointTape, next: JointTape): JointTape => ({
  ...one,
  length: ticks(Math.max(one.length, next.length)),
  depth: ticks(one.depth + next.depth),
});

function tapeJoint(piece: PieceNet, joint: Joint, underLoad: number): JointTape {
  const tab = piece.faces[joint.tab]!;
  const target = piece.faces[joint.target]!;
  const base = baseLine(piece, joint.tab);
  const along = Math.floor(stripAlong(tab, base));
  const length = FLAPS.includes(target.role)
    ? Math.min(along, Math.ceil(lengthOf(baseLine(piece, joint.target))))
    : along;
  return {
    panel: tab.panel,
    onto: target.panel,
    length: ticks(length),
    strips: joint.carries ? underLoad : 1,
    glueOnly: joint.glueOnly ?? false,
    depth: depthBeyond(tab, base),
  };
}

/**
 * A strip runs the length of the score; its ends are trimmed with the tab's bevel. Where the panel runs to a point, as the mitred corner of a
 * crash-lock bottom does, the strip is only as long as the panel still is a tape's width in.
 */
function stripAlong(tab: Face, base: Line): number {
  const whole = lengthOf(base);
  const inside = widthBeyond(tab, base, USUAL_TAPE);
  return inside > 0 && inside < whole / 2 ? inside : Math.ceil(whole);
}

/** How long a panel is along its base line, so far beyond it. */
function widthBeyond({ ring }: Face, [a, b]: Line, beyond: Ticks): number {
  const long = lengthOf([a, b]);
  const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  const placed = ring.map(({ x, y }) => ({
    along: (x - a.x) * ux + (y - a.y) * uy,
    off: Math.abs((x - a.x) * uy - (y - a.y) * ux),
  }));
  const crossings = placed.flatMap((from, i) => {
    const to = placed[(i + 1) % placed.length]!;
    if (from.off < beyond === to.off < beyond) return [];
    return [from.along + ((beyond - from.off) / (to.off - from.off)) * (to.along - from.along)];
  });
  return crossings.length < 2 ? 0 : Math.max(...crossings) - Math.min(...crossings);
}

/** The line a face hangs on, where tape runs; the longest edge of a face that hangs on none, or on another tab and so carries its seam on. */
function baseLine(piece: PieceNet, index: number): Line {
  const hinge = piece.hinges.find(({ child }) => child === index);
  if (hinge && piece.faces[hinge.parent]?.role !== 'glueTab') return [hinge.a, hinge.b];
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
