import type { FamilyEnd, RowMerit } from '../../core/fit';
import type { LengthUnit } from '../../core/units';
import type { Count, Naming, Texts } from './texts';

/** Texts of the Marks page. */
export type MarksWords = Texts<
  | 'noRecipe'
  | 'pickBox'
  | 'styleGone'
  | 'asked'
  | 'fromContents'
  | 'fromBox'
  | 'toContents'
  | 'slack'
  | 'slackHelp'
  | 'sheet'
  | 'tool'
  | 'noTool'
  | 'toShelf'
  | 'held'
  | 'heldWhy'
  | 'rows'
  | 'plot'
  | 'plotWhy'
  | 'roughness'
  | 'paperEach'
  | 'sizes'
  | 'costs'
  | 'handling'
  | 'blank'
  | 'use'
  | 'inUse'
  | 'why'
  | 'ownNet'
  | 'ownNetWhy'
  | 'noneReads'
  | 'noneReadsWhy'
  | 'moreSlack'
  | 'noneFits'
  | 'compare'
  | 'compareWhy'
  | 'comparing'
  | 'stop'
  | 'style'
  | 'cannot'
  | 'takeStyle'
  | 'searching'
  | 'turnIt'
  | 'takeSheet'
  | 'turnedNow'
  | 'turnBack'
  | 'more'
  | 'family'
  | 'familyWhy'
  | 'familyCount'
  | 'familyRule'
  | 'nested'
  | 'grown'
  | 'familyAir'
  | 'familyAirHelp'
  | 'familyPercent'
  | 'member'
  | 'roomIs'
  | 'oneOfEach'
  | 'beside'
  | 'besideWhich'
  | 'keepStyle'
  | 'holdsNothing'
  | 'holds'
  | 'scores'
  | 'betweenMarks'
  | 'handWork'
> & {
  readonly cards: CardWords;
  /** What lies behind the cards. */
  readonly allRows: Count;
  readonly sameRoomIn: Naming;
  readonly recipeInStyle: (recipe: string, style: string) => string;
  readonly roomSides: readonly [string, string, string];
  readonly familyBusy: (found: number, members: number) => string;
  readonly memberName: (recipe: string, place: number, members: number) => string;
  readonly memberCalled: Naming;
  readonly memberNameLabel: (place: number) => string;
  readonly memberNone: (need: string, sheet: string, because: FamilyEnd) => string;
  readonly insideOutside: (inside: string, outside: string) => string;
  readonly makeFamily: Count;
  readonly oneOfEachFrom: (sheets: number, sheet: string) => string;
  readonly millilitres: Count;
  readonly scoresAt: (scores: number, settings: number) => string;
  readonly fromOneSheet: Naming;
  readonly minutes: (seconds: number) => string;
  readonly marksOf: Naming;
  readonly need: Naming;
  readonly toolMarks: (name: string, finest: string, reach: string) => string;
  readonly grooves: Count;
  readonly stylus: Naming;
  readonly holdAt: (name: string, length: string) => string;
  readonly hardest: Readonly<Record<LengthUnit, readonly string[]>>;
  readonly perSheet: (boxes: number, sheet: string) => string;
  readonly sheetsEach: (sheets: string, sheet: string) => string;
  readonly fitsNot: Naming;
  readonly loose: Naming;
  readonly snug: string;
  readonly settings: (settings: number, edges: number) => string;
  readonly byTemplate: Count;
  readonly point: (sizes: string, roughness: number, paper: string) => string;
  readonly roughnessWhy: (parts: readonly string[], sum: number) => string;
  readonly markPart: (length: string, roughness: number) => string;
  readonly excessWhy: (sides: readonly string[], percent: string) => string;
  readonly excessSide: (side: string, has: string, need: string) => string;
  readonly paperWhy: (parts: readonly string[]) => string;
  readonly paperPart: (piece: string, across: string, up: string) => string;
  readonly otherSheet: Naming;
  readonly turned: Naming;
  readonly twoPiece: (piece: string, size: string) => string;
  readonly doneOf: (done: number, of: number) => string;
  readonly ways: Naming;
};

/** Texts of the sizes shown first. */
export interface CardWords extends Texts<'noRoom' | 'sameSize' | 'goOn'> {
  readonly merits: (merits: readonly RowMerit[]) => string;
  readonly toSpare: Naming;
  readonly instead: (now: string, was: string) => string;
  /** `was` 0: it does not fit the sheet. */
  readonly perSheetInstead: (now: number, was: number) => string;
  readonly changes: (parts: readonly string[], paper: string | null) => string;
}
