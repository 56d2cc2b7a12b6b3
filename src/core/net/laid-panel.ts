import type { EdgeName, Role } from '../styles/language/types';
import type { Point } from './types';

/** A piece of a panel's edge, as its face's ring runs it. */
export interface Side {
  readonly face: number;
  readonly a: Point;
  readonly b: Point;
  /** How far the face leans from its panel's chord plane when closed; 0 on a flat panel. */
  readonly leanDeg: number;
}

export interface LaidPanel {
  readonly name: string;
  readonly role: Role;
  readonly faces: readonly number[];
  /** Curved edges are runs of chords; a panel whose edge has shrunk to nothing has no pieces there. */
  readonly sides: ReadonlyMap<EdgeName, readonly Side[]>;
  /** Of a bowed panel: the heights of its chords' ends above its lower edge, and the lean of each strip. */
  readonly bend: Bend | null;
  /** Of a rolled sector. */
  readonly roll?: Roll;
}

export interface Bend {
  readonly stations: readonly number[];
  /** Set-back of the curved edge at each station. */
  readonly setBacks: readonly number[];
  readonly leansDeg: readonly number[];
}

/** How a rolled sector bends: so many equal facets about its tip, each folded against the one before. */
export interface Roll {
  readonly facetDeg: number;
  readonly bendDeg: number;
  readonly facets: number;
}

export interface LaidFace {
  readonly panel: string;
  readonly role: Role;
  readonly ring: readonly Point[];
  /** For each edge of the ring (from corner k to k + 1): the curve it is a chord of, or null. */
  readonly curves: readonly (number | null)[];
  /** Each clockwise, with the curves its edges are chords of. */
  readonly holes: readonly LaidRing[];
  /** Cuts with card on either side, each there and back. */
  readonly slits?: readonly LaidRing[];
}

/** A ring of corners and, for each edge that leaves one, its curve or null. */
export interface LaidRing {
  readonly ring: readonly Point[];
  readonly curves: readonly (number | null)[];
}

interface LaidHinge {
  readonly parent: number;
  readonly child: number;
  readonly a: Point;
  readonly b: Point;
  readonly restDeg: number;
  readonly kind: 'score' | 'join';
  readonly panel: string;
}

export interface LaidCurve {
  readonly a: Point;
  readonly b: Point;
  readonly rise: number;
  /** The side of a→b it bulges to. */
  readonly bulge: 'left' | 'right';
  /** A cut until a panel hangs on it. */
  kind: 'score' | 'cut';
}

/** A bend between two faces of one panel that the fold tree does not turn about; it closes of itself. */
interface LaidBend {
  readonly one: number;
  readonly other: number;
  readonly restDeg: number;
}

/** A piece under construction: coordinates as the root lies, moved to the blank's corner at the end. */
export interface Bench {
  readonly faces: LaidFace[];
  readonly hinges: LaidHinge[];
  readonly curves: LaidCurve[];
  readonly bends: LaidBend[];
  readonly panels: Map<string, LaidPanel>;
}
