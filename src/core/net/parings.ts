import type { Role } from '../styles/language/types';
import { TAB_SLOPE } from '../styles/shapes/glued-tube';
import { markAbove } from '../units/marks';
import { inches, roundToTick, type Ticks, ticks } from '../units/ticks';
import type { Face, Hinge, PieceNet, Point } from './types';

/** How much is pared off each side of a flap that folds in first, so that it lies between the walls. source: 1/32 in, common practice, no source */
const PARING = inches(0, 1, 32);

/** What is snipped off the free edge of a tab is measured on marks so fine. source: our choice */
const SNIP_MARK = inches(0, 1, 16);
/** An end drawn with so much of a slope, 14 degrees, stays as it is. source: our choice; by hand it is no other than 15 */
const SLOPES = 1 / 4;
/** An end that slopes so much over a tab's width, 20 degrees, is clear of a crease it begins at. source: our choice */
const CLEAR_SLOPE = 0.36;
/** Of its score each end of a tab takes at most so much, however wide the tab is. source: our choice */
const MOST_OF_SCORE = 1 / 3;

/** A strip to pare off the side of a flap, or a slope to snip off the end of a tab: from the score to the free edge, the card that stays on its left or right. */
export interface Paring {
  readonly face: number;
  readonly a: Point;
  readonly b: Point;
  /** Taken off at the score, and off the free edge. */
  readonly atScore: Ticks;
  readonly atEdge: Ticks;
  /** The edge of the net it takes away, from the score out. */
  readonly near: Point;
  readonly far: Point;
}

/** Panels that lie between others, and are slit free of them. */
const PARED: ReadonlySet<Role> = new Set(['bottomFlap', 'dustFlap', 'lid', 'glueTab', 'lockFlap'] as const);

/**
 * Flaps and tabs that end up inside are slit free as wide as the panel they hang on, and lie between panels that are a card nearer. Square
 * sides of flaps are pared by `PARING` once they are cut. Square ends of glue tabs are snipped to a slope, so that the tab slips in and does
 * not show, and begin as far from a crease across them. The net keeps the slit. In ticks, where the card is cut.
 */
export function paringsOf(piece: PieceNet): readonly Paring[] {
  const { faces, hinges, overlaps, joints } = piece;
  const inner = new Set([
    ...overlaps.flatMap((layers) => layers.slice(0, -1)),
    ...joints.flatMap(({ tab, lap }) => (lap === 'inside' ? [tab] : [])),
  ]);
  return [...inner].flatMap((face): Paring[] => {
    const flap = faces[face];
    const hinge = hinges.find(({ child, kind }) => child === face && kind === 'score');
    if (flap === undefined || !PARED.has(flap.role) || hinge === undefined) return [];
    return sidesOf(flap, hinge).flatMap((side): Paring[] => {
      const off = flap.role === 'glueTab' ? tabEnd(piece, face, hinge, side) : squareSide(side);
      if (off === null) return [];
      const move = (point: Point, by: number): Point => ({
        x: roundToTick(point.x + side.along.x * by),
        y: roundToTick(point.y + side.along.y * by),
      });
      const { near, far } = side;
      return [{ face, near, far, ...off, a: move(near, off.atScore), b: move(far, off.atEdge - side.lean) }];
    });
  });
}

/** The outline of a face once it is pared and snipped. */
export const paredRing = (
  { faces }: PieceNet,
  face: number,
  parings: readonly Paring[],
): readonly Point[] => {
  const own = parings.filter((paring) => paring.face === face);
  return (faces[face]?.ring ?? []).map((point) => {
    const cut = own.find(({ near, far }) => isSame(near, point) || isSame(far, point));
    return cut === undefined ? point : isSame(cut.near, point) ? cut.a : cut.b;
  });
};

/** One of the two edges of a flap that leave its score. */
interface Side {
  readonly near: Point;
  readonly far: Point;
  /** One tick along the score, into the flap. */
  readonly along: { readonly x: number; readonly y: number };
  /** How far the edge draws in by itself, and how far out it reaches. */
  readonly lean: number;
  readonly out: number;
}

function sidesOf({ ring }: Face, { a, b }: Hinge): readonly Side[] {
  const isEnd = (point: Point): boolean => isSame(point, a) || isSame(point, b);
  return ring.flatMap((p, at): Side[] => {
    const q = ring[(at + 1) % ring.length] ?? p;
    if (isEnd(p) === isEnd(q)) return [];
    const [near, far] = isEnd(p) ? [p, q] : [q, p];
    const score = minus(isSame(near, a) ? b : a, near);
    const long = Math.hypot(score.x, score.y);
    const along = { x: score.x / long, y: score.y / long };
    const edge = minus(far, near);
    const lean = edge.x * along.x + edge.y * along.y;
    return [{ near, far, along, lean, out: Math.abs(edge.x * along.y - edge.y * along.x) }];
  });
}

type TakenOff = Pick<Paring, 'atScore' | 'atEdge'>;

const squareSide = ({ lean }: Side): TakenOff | null =>
  Math.abs(lean) < 1 ? { atScore: PARING, atEdge: PARING } : null;

/** A tab that hangs on another carries it on, and ends with it. */
function tabEnd({ faces, edges }: PieceNet, face: number, hinge: Hinge, side: Side): TakenOff | null {
  const { near, far, lean, out } = side;
  const isFolded = edges.some(
    ({ a, b, kind }) =>
      (kind === 'score' || kind === 'join') &&
      ((isSame(a, near) && isSame(b, far)) || (isSame(b, near) && isSame(a, far))),
  );
  if (isFolded || faces[hinge.parent]?.role === 'glueTab') return null;
  const meets = faces.some(
    ({ ring }, at) => at !== hinge.parent && at !== face && ring.some((point) => isSame(point, near)),
  );
  if (lean >= (meets ? CLEAR_SLOPE : SLOPES) * out - 1) return null;
  const atScore = meets ? PARING : ticks(0);
  const most = MOST_OF_SCORE * Math.hypot(hinge.a.x - hinge.b.x, hinge.a.y - hinge.b.y);
  const slope = Math.min(markAbove(ticks(Math.ceil(TAB_SLOPE * out)), SNIP_MARK), most - atScore);
  return { atScore, atEdge: ticks(Math.floor(Math.max(lean, atScore + slope))) };
}

const isSame = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;
const minus = (p: Point, q: Point): { readonly x: number; readonly y: number } => ({
  x: p.x - q.x,
  y: p.y - q.y,
});
