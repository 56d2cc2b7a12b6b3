import type { Role } from './roles';

/**
 * What a piece of a style is cut and folded from: plain data.
 *
 * Frame: the net lies inside face up, x right, y up. A panel's edges run counter-clockwise, so its material is always on the left of an
 * edge and the outside on the right. A hinge frame has `along` = the way the parent's edge runs and `out` = away from the parent.
 */

/**
 * A linear form in the style's symbols, lets and `t` (caliper), e.g. `'2 width + tab'`, `'depth/2'`, `'1/3 height'`, `'width + 2t + ease'`.
 * Bare constants are written as a maker would, with a unit: `'1/8 in'`, `'3 mm'`.
 */
export type Len = string;

export type { Role };

/** Degrees, or the name of one of the style's `angles`. Valley (towards the viewer, the inside) is positive. */
export type Angle = number | string;

/** Values of every symbol, let and `t` in millimeters: what a non-linear quantity may read. */
export type Values = Readonly<Record<string, number>>;

export type EdgeName = 'left' | 'right' | 'up' | 'down' | `e${number}`;

interface PanelBase {
  readonly role: Role;
  /** `'front.right'`: the parent panel's edge this one hinges on. The root panel has none and stays on the bench. */
  readonly on?: `${string}.${EdgeName}`;
  /** Where the hinge begins along the parent's edge (counter-clockwise); default 0. */
  readonly at?: Len;
  /** Fold at the closed state. */
  readonly fold?: Angle;
  /** The same plane carried on: no score between it and its parent, and no fold. */
  readonly flush?: true;
}

/** What a window is, other than a rectangle: each made of straight lines and true arcs. */
export type WindowShape = 'rounded' | 'arch' | 'round' | 'oval' | 'heart';

/**
 * Something cut out of a panel: out of the middle of a rectangle unless `at` gives its middle in the hinge frame. A round end is chords on
 * true arcs. The size of a slot is across and up as the net lies.
 */
export type HoleSpec =
  /** The panel less a margin all round; a shape of it stands as large as it can in the middle, its head up as the net lies or `headDown`. */
  | {
      readonly hole: 'window';
      readonly margin: Len;
      readonly shape?: WindowShape;
      readonly headDown?: true;
    }
  | { readonly hole: 'round'; readonly across: Len; readonly at?: readonly [along: Len, out: Len] }
  | {
      readonly hole: 'slot';
      readonly size: readonly [across: Len, up: Len];
      readonly at?: readonly [along: Len, out: Len];
    }
  /** One straight cut, for a tab or a ribbon. It runs across or up on the flat net. */
  | {
      readonly hole: 'slit';
      readonly long: Len;
      readonly runs: 'across' | 'up';
      readonly at?: readonly [along: Len, out: Len];
    };

/** A half-round out of the middle of a free edge: of a rectangle, or one of a lens. */
export interface NotchSpec {
  readonly edge: 'left' | 'right' | 'up' | 'down';
  readonly radius: Len;
}

/**
 * A cut at a free edge or corner of a flat panel, named by an edge.
 * - `round`, `slant`: the corner where this edge begins, counter-clockwise. `size` is the radius; or how much a slant takes off each edge.
 * - `arch`, `scoop`: the whole edge becomes one true arc, `size` high. An arch touches the old edge in its middle, and its ends draw in; a
 *   scoop keeps its ends, and its middle draws in.
 */
export interface CutSpec {
  readonly at: EdgeName;
  readonly cut: 'round' | 'slant' | 'arch' | 'scoop';
  readonly size: Len;
}

/**
 * The six shapes of a panel.
 * - rectangle: `size` is [across, up] as the net lies. `taper` draws in its two free corners along the hinge: one form, or [start, end]
 *   as the parent's edge runs. `bow` curves both its left and right edges inwards by that rise (pillow pack wall): it bends, and its
 *   `fold` is then measured between chord planes. `follows` names a bowed panel it is glued to and bends with.
 * - outline: the hinge is edge e0, the whole parent edge unless `at` and `hinge` say otherwise; the other corners follow counter-clockwise
 *   in the hinge frame [along, out], so e1 leaves the end of the hinge where along is 0. A root outline gives all its corners in x, y;
 *   `asLies`: so does this one, from where its hinge starts (on a slanted hinge the corners stay on the maker's marks).
 * - regular: so many equal sides, edge e0 at the hinge (or level at the bottom, for a root) and the others counter-clockwise.
 * - lens: an end flap on a bowed edge; the form is the rise of its free edge beyond the chord (0 is straight, the bow's rise a full lens).
 * - leaf: one of a ring that closes a square mouth. From each end of its hinge an arc runs to the tip, half the hinge out; the form is how
 *   far that arc rises off its chord. It bends along both chords into a middle and two sides. One side goes under its neighbor.
 * - sector: part of a circle about its tip, rolled into a cone. The form is its radius; `turn` is its angle, under half a turn. Its edges: e0
 *   from the tip, e1 the arc, e2 back. A sector that `follows` another continues it beyond e2, and ends up inside its beginning.
 */
export type PanelSpec = PanelBase &
  (
    | {
        readonly size: readonly [across: Len, up: Len];
        readonly taper?: Len | readonly [Len, Len];
        readonly bow?: Len;
        readonly follows?: string;
        readonly holes?: readonly HoleSpec[];
        readonly notches?: readonly NotchSpec[];
        readonly cuts?: readonly CutSpec[];
      }
    | {
        readonly hinge?: Len;
        readonly outline: readonly (readonly [along: Len, out: Len])[];
        readonly asLies?: true;
        readonly holes?: readonly Extract<HoleSpec, { readonly at?: unknown }>[];
        readonly cuts?: readonly CutSpec[];
      }
    | { readonly regular: number; readonly side: Len }
    | { readonly lens: Len; readonly notches?: readonly NotchSpec[] }
    | { readonly leaf: Len }
    | { readonly sector: Len; readonly turn: Angle; readonly follows?: string }
  );

/** A score that is not a hinge of the tree (gusset, pleat): the two edges already meet in the flat, and must meet closed as well. */
export interface CreaseSpec {
  readonly between: readonly [`${string}.${EdgeName}`, `${string}.${EdgeName}`];
  readonly fold: Angle;
}

/** A panel glued onto another. `lap` says on which side of the target it ends up. `carries` marks a joint under load (taped double). */
export interface JointSpec {
  readonly panel: string;
  readonly onto: string;
  readonly lap: 'inside' | 'outside';
  readonly carries?: boolean;
  /** True where tape does not fit and only liquid glue holds. */
  readonly glueOnly?: boolean;
  /** How far off the target it ends up by design, in the thin-paper model (a last panel drawn one caliper short); default 0. */
  readonly gap?: Len;
  /** Only there while this length is more than nothing, or while it is not: flaps that just meet have no lap to glue. */
  readonly when?: Len;
  readonly unless?: Len;
}

/** Two edges that lie apart in the flat and must coincide when closed, or lie `gap` apart by design. */
export type SeamSpec = readonly [`${string}.${EdgeName}`, `${string}.${EdgeName}`, gap?: Len];

/** One act of closing, in the order hands do it. `to` overrides the closed angle for this step (180 = laid flat to glue). */
export type ClosingStep =
  | {
      readonly do: 'fold';
      readonly panels: readonly string[];
      readonly to?: Angle;
      /** Angles at equal parts of the way, for panels that cannot turn evenly because they are glued to one another. */
      readonly through?: readonly Readonly<Record<string, Angle>>[];
      readonly bends?: boolean;
      readonly tip?: string;
    }
  | { readonly do: 'glue'; readonly panel: string; readonly onto: string; readonly tip?: string }
  | {
      readonly do: 'tuck';
      readonly panels: readonly string[];
      readonly bends?: boolean;
      readonly tip?: string;
    };

/** Ribbon put through the openings of a panel once the piece is closed. `long`: all of it, with what is knotted or taped inside. */
export interface ThreadSpec {
  readonly panel: string;
  readonly long: Len;
  readonly tip: string;
}

export interface PieceSpec {
  readonly label: string;
  /** A lid: it goes over another piece and stands with its opening down. */
  readonly lid?: true;
  readonly panels: Readonly<Record<string, PanelSpec>>;
  readonly creases?: readonly CreaseSpec[];
  readonly joints: readonly JointSpec[];
  readonly seams?: readonly SeamSpec[];
  readonly closing: readonly ClosingStep[];
  readonly threads?: readonly ThreadSpec[];
  /** Groups of panels that lie on one another when closed, innermost first; a joint is such a pair already. */
  readonly overlaps?: readonly (readonly string[])[];
  /**
   * Leaves that lock in a ring, in the order of the strip, left to right: each goes over the one before, and the first over the last. They
   * turn together while the lower side of each bends under its neighbor.
   */
  readonly rings?: readonly (readonly string[])[];
  /** Panels that bound the room, and the room's closed formula in mm³ from score-to-score values (thin paper). */
  readonly shell: readonly string[];
  readonly roomMm3: (values: Values) => number;
  /** The same as text, for a style file. */
  readonly roomFormula?: string;
}
