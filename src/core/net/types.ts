import type { Chosen, Role } from '../styles/language/types';
import type { Ticks } from '../units/ticks';
import type { MeasuredFit } from './lay-fits';

/** A point of the flat net: ticks, inside face up, origin at the blank's lower left, x right, y up. */
export interface Point {
  readonly x: Ticks;
  readonly y: Ticks;
}

export interface Blank {
  readonly across: Ticks;
  readonly up: Ticks;
}

/** One flat piece of card between scores. A curved panel is several faces of the same `panel`, joined by `join` edges. */
export interface Face {
  readonly name: string;
  readonly panel: string;
  readonly role: Role;
  /** Corners counter-clockwise. */
  readonly ring: readonly Point[];
  /** Holes (window, hang hole, handle), each clockwise. */
  readonly holes: readonly (readonly Point[])[];
}

/**
 * - `edge`: the blank's own trimmed edge, no work. `cut`: outline made at the bench.
 * - `score`: pressed and folded. `slit`: cut through with card on both sides. `join`: a modelling line, nothing is done there.
 */
export type EdgeKind = 'edge' | 'cut' | 'score' | 'slit' | 'join';

export interface NetEdge {
  readonly a: Point;
  readonly b: Point;
  readonly kind: EdgeKind;
  /** Face on the left of a→b, and on the right (null outside the net). Indices into `faces`. */
  readonly left: number;
  readonly right: number | null;
  /** Signed fold at the closed state, valley positive; 0 where nothing folds. */
  readonly foldDeg: number;
  /** Index into `hinges`, or null. A score without a hinge is a crease off the tree and must close as a seam. */
  readonly hinge: number | null;
  /** Set on the chords of a drawn curve: the curve's index in `curves`. */
  readonly curve: number | null;
}

/** One line of the fold tree: `child` turns about a→b (as it runs in the parent's ring). Indices into `faces`; parents come before children. */
export interface Hinge {
  readonly parent: number;
  readonly child: number;
  readonly a: Point;
  readonly b: Point;
  readonly restDeg: number;
  readonly kind: 'score' | 'join';
  /** The panel whose `fold` this is; closing steps name it. */
  readonly panel: string;
}

/** A true arc behind a run of chords, for print: from a to b about `centre`, all in ticks (centre need not be whole). */
export interface Curve {
  readonly a: Point;
  readonly b: Point;
  readonly centre: readonly [number, number];
  readonly radius: number;
  readonly kind: 'score' | 'cut';
}

export interface Joint {
  /** Face indices: the glued tab or flap, and what it is glued to. */
  readonly tab: number;
  readonly target: number;
  readonly lap: 'inside' | 'outside';
  readonly carries: boolean;
  /** Tape does not fit: only liquid glue holds it. */
  readonly glueOnly?: true;
  /** Distance between the two planes when closed, thin paper: 0 unless a panel is drawn short on purpose. */
  readonly gap: Ticks;
}

/** Two edges (by index into `edges`) that coincide when closed, or lie `gap` apart by design. */
export interface Seam {
  readonly a: number;
  readonly b: number;
  /** The face whose edge each is: along a slit two faces meet that part when folded. */
  readonly faces: readonly [number, number];
  readonly gap: Ticks;
}

/** One act of closing: hinges that turn together, and to what angle; or a joint that is glued. */
export type ClosingAct =
  | {
      readonly do: 'fold' | 'tuck';
      readonly hinges: readonly number[];
      readonly toDeg: readonly number[];
      /** Angles beside `hinges` at equal parts of the way; where left out, all turn evenly. */
      readonly through?: readonly (readonly number[])[] | undefined;
      readonly panels: readonly string[];
      readonly bends: boolean;
      readonly tip: string | null;
    }
  | { readonly do: 'glue'; readonly joint: number; readonly tip: string | null };

/** Ribbon put through the openings of a panel once the piece is closed. */
interface Thread {
  readonly panel: string;
  readonly length: Ticks;
  readonly tip: string;
}

/** One piece of card, flat, with everything that folding and the bench need to know of it. */
export interface PieceNet {
  readonly id: string;
  readonly label: string;
  /** A lid: it goes over another piece and stands with its opening down. */
  readonly lid?: true;
  readonly blank: Blank;
  readonly faces: readonly Face[];
  readonly edges: readonly NetEdge[];
  readonly hinges: readonly Hinge[];
  readonly curves: readonly Curve[];
  readonly joints: readonly Joint[];
  readonly seams: readonly Seam[];
  /** Faces lying on one another when closed, innermost first; the faces of one bent panel are one layer. */
  readonly overlaps: readonly (readonly number[])[];
  readonly closing: readonly ClosingAct[];
  readonly threads?: readonly Thread[];
  /** Pieces of the blank that fall away, each a ring counter-clockwise. */
  readonly waste: readonly (readonly Point[])[];
  /** Faces bounding the room, and the closed formula's value, thin paper. */
  readonly shell: readonly number[];
  readonly roomMm3: number;
}

/** A style at given sizes: one net a piece, and every value by name (ticks) so that words can quote them. */
export interface BoxNet {
  readonly styleId: string;
  readonly pieces: readonly PieceNet[];
  /** What pieces glued to one another make, laid as one; it closes and is drawn, and is never cut as one. */
  readonly whole?: PieceNet;
  readonly values: Readonly<Record<string, Ticks>>;
  /** The choices it was built with, defaults filled in. */
  readonly options: Chosen;
  readonly inside: { readonly width: Ticks; readonly depth: Ticks; readonly height: Ticks };
  /** Pieces whose left and right are swapped in saved decorations. */
  readonly sidesRenamed?: readonly string[];
  /** It is drawn flat and bulges over what is in it. */
  readonly pocket?: true;
  readonly caliperUm: number;
  /** What goes into or over what, the one with the least play for each mark first; a net of one's own has none. */
  readonly fits?: readonly MeasuredFit[];
}
