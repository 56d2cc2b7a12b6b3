import type { Len, PieceSpec, Values } from './piece-types';

/**
 * What a box style is: plain data. Everything else (net, fold, volume, checks, bench program, card, parts) is derived from it.
 */

export type * from './piece-types';

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
  /** Panels that all get it (a slot through two strips); for a notch, hang tab, corner or hole below a rim the edges, as in `'front.up'`. */
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
  /** A round hole for a ribbon: in the middle of a panel, or below the middle of an edge it names. */
  readonly ribbon?: readonly AddOnPlace[];
  /** A loop of ribbon through two holes or a slit, in the middle of a panel. */
  readonly pull?: readonly AddOnPlace[];
  /** Corners cut round where nothing hangs, each named by the edge that begins there. */
  readonly corners?: readonly AddOnPlace[];
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
   * Pieces whose left and right were once named as seen from inside. Saved boxes keep those names, so what is saved of a dressing names the
   * panel on the other side. Only for pieces declared before the change; a style file never has it.
   */
  readonly sidesRenamed?: readonly string[];
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
