import type { AnswersQuestion, Part, StyleAnswers } from '../core/answers';
import type {
  EasyMarkQuestion,
  EasyRow,
  FamilyMember,
  FamilyQuestion,
  NeededRoom,
  WayOut,
} from '../core/fit';
import type { Contents } from '../core/rows/contents';
import type { SheetPaper } from '../core/yield';

/** Texts of the makers' styles that a question names; they travel with it, since a worker knows only ours. */
interface OwnStyles {
  readonly ownStyles?: readonly string[];
}

/** Sizes on easy marks in one style after the other; the styles travel by id. */
export interface MarksAsk extends Omit<EasyMarkQuestion, 'style' | 'held' | 'heldOptions'>, OwnStyles {
  readonly styleIds: readonly string[];
  /** Symbols and options held, for the first style only. */
  readonly held: EasyMarkQuestion['held'];
  readonly heldOptions: EasyMarkQuestion['heldOptions'];
  /** Sheets to try where the first style fits none. */
  readonly otherPapers: readonly SheetPaper[];
}

/** A family in one style, which travels by id. */
export interface FamilyAsk extends Omit<FamilyQuestion, 'style'>, OwnStyles {
  readonly styleId: string;
}

/** Boxes for four answers, in every style there is. */
export interface AnswersAsk extends AnswersQuestion, OwnStyles {}

/** A newer question of a kind makes the older one of that kind worthless; `stop` ends a search without an answer. */
export type FitQuestion =
  | { readonly kind: 'arrange'; readonly number: number; readonly contents: Contents }
  | { readonly kind: 'marks'; readonly number: number; readonly ask: MarksAsk }
  | { readonly kind: 'family'; readonly number: number; readonly ask: FamilyAsk }
  | {
      readonly kind: 'answers';
      readonly number: number;
      readonly ask: AnswersAsk;
      readonly part: Part;
    }
  | { readonly kind: 'stop'; readonly number: number };

/** One style's rows, easiest first, and how many styles are done. */
export interface StyleRows {
  readonly styleId: string;
  readonly rows: readonly EasyRow[];
  /** Where no row of the first style fits the sheet. */
  readonly waysOut: readonly WayOut[];
  readonly done: number;
  readonly of: number;
}

export type FitAnswer =
  | { readonly kind: 'arrange'; readonly number: number; readonly rooms: readonly NeededRoom[] }
  | { readonly kind: 'marks'; readonly number: number; readonly found: StyleRows }
  | { readonly kind: 'family'; readonly number: number; readonly member: FamilyMember | null }
  | { readonly kind: 'answers'; readonly number: number; readonly found: StyleAnswers }
  /** It could not be worked out; the worker goes on. */
  | { readonly kind: 'failed' };
