import type { Role } from './roles';

/**
 * What a box style is: plain data. Everything else (net, fold, volume, checks, bench program, card, parts) is derived from it.
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

export interface SymbolSpec {
  /** A `size` is what the maker chooses; an `allowance` is a working dimension with a sound default. */
  readonly role: 'size' | 'allowance';
  readonly label: string;
  /** One sentence: what this length is, measured between what (score to score, inside, outside). */
  readonly help: string;
  /** May follow the symbols declared before it (`'height/2'`); `min` and `max` are plain lengths. */
  readonly default: Len;
  /** What a new box begins with, where that is no longer the default: saved boxes that leave the size out keep the default. */
  readonly forNew?: Len;
  readonly min: Len;
  readonly max: Len;
  /** Asked only when the options are chosen in one of these ways; otherwise nothing is made of it. */
  readonly given?: readonly Chosen[];
}

/**
 * A length or angle that no linear form can give (slant heights, tapers): millimeters in, millimeters or degrees out, a length rounded to
 * ticks once. `onMark`: a length that hands have to measure is taken up to the maker's next mark, and what follows counts with that.
 */
export interface Quantity {
  readonly means: string;
  readonly of: (values: Values, chosen: Chosen) => number;
  /** The same as text, for a style file (`core/style-file/formula`): a test holds the two to each other. It may use `workings`. */
  readonly formula?: string;
  readonly onMark?: true;
}

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
    };

/** A half-round out of the middle of a rectangle's free edge. */
export interface NotchSpec {
  readonly edge: 'left' | 'right' | 'up' | 'down';
  readonly radius: Len;
}

/**
 * The four shapes of a panel.
 * - rectangle: `size` is [across, up] as the net lies. `taper` draws in its two free corners along the hinge: one form, or [start, end]
 *   as the parent's edge runs. `bow` curves both its left and right edges inwards by that rise (pillow pack wall): it bends, and its
 *   `fold` is then measured between chord planes. `follows` names a bowed panel it is glued to and bends with.
 * - outline: the hinge is edge e0, the whole parent edge unless `at` and `hinge` say otherwise; the other corners follow counter-clockwise
 *   in the hinge frame [along, out], so e1 leaves the end of the hinge where along is 0. A root outline gives all its corners in x, y;
 *   `asLies`: so does this one, from where its hinge starts (on a slanted hinge the corners stay on the maker's marks).
 * - regular: so many equal sides, edge e0 at the hinge (or level at the bottom, for a root) and the others counter-clockwise.
 * - lens: an end flap on a bowed edge; the form is the rise of its free edge beyond the chord (0 is straight, the bow's rise a full lens).
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
      }
    | {
        readonly hinge?: Len;
        readonly outline: readonly (readonly [along: Len, out: Len])[];
        readonly asLies?: true;
        readonly holes?: readonly Extract<HoleSpec, { readonly at?: unknown }>[];
      }
    | { readonly regular: number; readonly side: Len }
    | { readonly lens: Len }
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

export interface PieceSpec {
  readonly label: string;
  /** A lid: it goes over another piece and stands with its opening down. */
  readonly lid?: true;
  readonly panels: Readonly<Record<string, PanelSpec>>;
  readonly creases?: readonly CreaseSpec[];
  readonly joints: readonly JointSpec[];
  readonly seams?: readonly SeamSpec[];
  readonly closing: readonly ClosingStep[];
  /** Groups of panels that lie on one another when closed, innermost first; a joint is such a pair already. */
  readonly overlaps?: readonly (readonly string[])[];
  /** Panels that bound the room, and the room's closed formula in mm³ from score-to-score values (thin paper). */
  readonly shell: readonly string[];
  readonly roomMm3: (values: Values) => number;
  /** The same as text, for a style file. */
  readonly roomFormula?: string;
}

/** A bound on one symbol, with the words for when it is broken. `{name}` prints a value; `{limit}` the nearest legal value on the maker's marks. */
export interface ConstraintSpec {
  readonly code: string;
  readonly symbol: string;
  readonly atLeast?: Len;
  readonly atMost?: Len;
  readonly severity: 'stop' | 'warn' | 'note';
  /** Asked only when the options are chosen in one of these ways. */
  readonly given?: readonly Chosen[];
  /** Extra lengths the sentence names, as linear forms. */
  readonly facts?: Readonly<Record<string, Len>>;
  /** Value and reason: 'Bottom flaps {bottomFlap} leave a hole {hole} wide.' */
  readonly says: string;
  /** What to do: 'Make them at least {limit}.' */
  readonly remedy: string;
}

/** What the tests prove at every size. */
export type PromiseSpec =
  | {
      readonly claim: 'covers';
      readonly piece: string;
      readonly panels: readonly string[];
      readonly area: readonly [Len, Len];
    }
  /** How much larger the outer piece is, score to score: [left to right, front to back], or above it where the inner one `slides` in. */
  | {
      readonly claim: 'nests';
      readonly inner: string;
      readonly outer: string;
      readonly gap: readonly [Len, Len];
      readonly slides?: true;
    };

/**
 * What goes into or over what, along one way. `room` less `body` less `card` is clear between the faces of the card when every mark is true,
 * and at least `ease` of it must stay.
 */
export interface FitSpec {
  /** Plain words: 'lid over the tray, left to right'. */
  readonly what: string;
  /** Of what takes in and of what goes in, score to score or to the cut edge. */
  readonly room: Len;
  readonly body: Len;
  /** All the card between those two lines, in `t`. */
  readonly card: Len;
  readonly ease: Len;
  /** How many marks of the hand it hangs on; each moves what is clear by as much as it is off. */
  readonly marks: number;
  /** Those marks in words, and what keeps them alike. */
  readonly truest: string;
  readonly saves: string;
  /** Code of the limit that says when it is too tight; the fit then tells only its marks and how many close. */
  readonly saidBy?: string;
  /** There only when the options are chosen in one of these ways. */
  readonly given?: readonly Chosen[];
}

/** One choice of construction (wall order, seam at back or side, tab left or right). The first choice is the default. */
export interface OptionSpec {
  readonly label: string;
  readonly help: string;
  readonly choices: readonly { readonly id: string; readonly label: string }[];
  /** What a new box is made with, where that is no longer the first choice: saved boxes that leave the option out keep the first. */
  readonly forNew?: string;
  /** Put there by the style's `addOns`; its first choice is to go without. */
  readonly addOn?: true;
  /** Asked only when the options are chosen in one of these ways. */
  readonly given?: readonly Chosen[];
}

/** Where an add-on may go: a choice of the maker's. */
export interface AddOnPlace {
  readonly id: string;
  readonly label: string;
  readonly piece: string;
  /** A new box has it from the start. */
  readonly forNew?: true;
  /** Panels that all get it (a slot through two strips); for a notch or hang tab the edges, as in `'front.up'`. */
  readonly at: readonly string[];
  /** Up as the net lies is down to whoever looks at it: a lid that hangs on the back. */
  readonly headDown?: true;
}

/** What may be added to a style, and where. One declaration: options, lengths, limits, panels and holes follow from it. */
interface AddOns {
  /** An opening of the maker's shape with film behind it, in a rectangle that carries no bend. */
  readonly window?: readonly AddOnPlace[];
  /** A header above a free edge, folded double, with a hole to hang it by. */
  readonly hangTab?: readonly AddOnPlace[];
  /** A half-round in a free edge, for a thumb. */
  readonly notch?: readonly AddOnPlace[];
  /** A slot to carry it by. */
  readonly slot?: readonly AddOnPlace[];
  /** A round hole for a ribbon. */
  readonly ribbon?: readonly AddOnPlace[];
  /** Its dust flaps may be cut square instead of slanted. */
  readonly dustFlaps?: true;
}

export type Chosen = Readonly<Record<string, string>>;
export type Pieces = Readonly<Record<string, PieceSpec>>;

/** A side of the room inside, in the order of `inside`. */
type InsideSide = 'width' | 'depth' | 'height';

export interface BoxStyle {
  readonly id: string;
  readonly version: 1;
  readonly name: string;
  /** Where the construction comes from; a code of practice's family where it has one. */
  readonly source: string;
  readonly goodFor: string;
  readonly watchOut: string;
  readonly symbols: Readonly<Record<string, SymbolSpec>>;
  /** Inside room of the closed box as forms [width, depth, height], thin paper taken off: what an item has. */
  readonly inside: readonly [Len, Len, Len];
  /** The two inside sides of the end that things slide in through; without it they go in from above. */
  readonly slidesInBy?: readonly [InsideSide, InsideSide];
  /** A flat pocket that bulges over what is in it: its room is what `inside` says, and no solid is built of it. */
  readonly pocket?: true;
  /** `open`: its roof stands open round what rises above the rim, though it closes over the rest. */
  readonly roof?: 'open';
  /** Sums with the caliper in them (`'2t + ease'`), rounded up to the maker's marks once. */
  readonly allowances?: Readonly<Record<string, Len>>;
  /** Named sums, each in the names before it. */
  readonly lets?: Readonly<Record<string, Len>>;
  /** Named steps that the formulas below share, each in the names before it: any unit, never rounded. Only formulas as text know them. */
  readonly workings?: Readonly<Record<string, string>>;
  readonly quantities?: Readonly<Record<string, Quantity>>;
  readonly angles?: Readonly<Record<string, Quantity>>;
  readonly options?: Readonly<Record<string, OptionSpec>>;
  readonly addOns?: AddOns;
  readonly pieces: Pieces | ((chosen: Chosen) => Pieces);
  /**
   * What pieces make that are glued to one another: laid as one net for the checks and pictures, never cut as one. Panels keep their names and
   * shapes from the pieces; what would lie doubled on the blank (a tab beside the panel it is glued to) comes after what it lies under.
   */
  readonly whole?: PieceSpec;
  readonly constraints: readonly ConstraintSpec[];
  readonly promises: readonly PromiseSpec[];
  readonly fits?: readonly FitSpec[];
  /** For the picker's filters. */
  readonly traits: readonly ('lid' | 'tall' | 'flat-packet')[];
}
