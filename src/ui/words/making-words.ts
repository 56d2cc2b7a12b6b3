import type { StepKind } from '../../core/bench';
import type { CostOf, ShoppingRow } from '../../core/plan';
import type { BuyingWords } from './buying-words';
import type { ContentsWords } from './contents-words';
import type { DressingWords } from './dressing-words';
import type { EventWords } from './event-words';
import type { FoldWords } from './fold-words';
import type { GlossaryNames } from './glossary-words';
import type { HandoutWords } from './handout-words';
import type { MarksWords } from './marks-words';
import type { HoursWords, RunPageWords } from './run-words';
import type { SheetsWords } from './sheets-words';
import type { Count, Naming, Texts } from './texts';

type Unit = ShoppingRow['unit'];

/** Texts of the pages of a workbook. */
export interface MakingWords {
  readonly contents: ContentsWords;
  readonly marks: MarksWords;
  readonly dressing: DressingWords;
  readonly handout: HandoutWords;
  readonly fold: FoldWords;
  readonly glossary: { readonly here: string; readonly names: GlossaryNames };
  readonly example: Texts<'app' | 'hints' | 'next' | 'noMore' | 'ownBox'> & {
    readonly says: Naming;
    /** Read one after the other. */
    readonly hint: readonly string[];
    readonly nth: (hint: number, of: number) => string;
  };
  readonly buying: BuyingWords;
  readonly run: RunPageWords;
  readonly hours: HoursWords;
  readonly box: Texts<
    | 'noRecipe'
    | 'noRecipeWhy'
    | 'pickStyle'
    | 'styleGone'
    | 'styleGoneWhy'
    | 'net'
    | 'sizes'
    | 'lines'
    | 'everyLine'
    | 'toKnow'
    | 'sound'
    | 'inside'
    | 'piece'
    | 'style'
    | 'otherStyle'
    | 'keepStyle'
    | 'paper'
    | 'anyPaper'
    | 'caliper'
    | 'caliperHelp'
    | 'workingDimensions'
    | 'faceUp'
    | 'faceInside'
    | 'faceOutside'
    | 'grain'
    | 'grainUpright'
    | 'grainAround'
    | 'grainFree'
    | 'benchCard'
    | 'template'
    | 'otherPrograms'
    | 'otherProgramsWhy'
    | 'netFileFailed'
    | 'netPieces'
    | 'netAllPieces'
    | 'construction'
  > & {
    readonly gsm: Count;
    readonly netFile: Texts<'fold' | 'svg' | 'dxf'>;
    readonly sides: Texts<'width' | 'depth' | 'height'>;
  };
  readonly event: EventWords;
  readonly sheets: SheetsWords;
  readonly shopping: Texts<
    | 'needsCount'
    | 'needsCountWhy'
    | 'toEvent'
    | 'working'
    | 'list'
    | 'what'
    | 'need'
    | 'onHand'
    | 'buy'
    | 'price'
    | 'enough'
    | 'noPrice'
    | 'costHead'
    | 'aFavor'
    | 'aFavorPaid'
    | 'paidWhy'
    | 'print'
  > & {
    readonly askFor: Naming;
    readonly units: Readonly<Record<Unit, Count>>;
    readonly packs: (count: number, units: number, unit: Unit) => string;
    readonly kinds: Readonly<Record<CostOf, string>>;
    readonly freeOf: Count;
    readonly share: (kind: string, total: string, perFavor: string) => string;
    readonly perFavor: (total: string, favors: number, each: string) => string;
  };
  readonly bench: Texts<
    | 'noRecipe'
    | 'toRecipe'
    | 'noCard'
    | 'mendFirstWhy'
    | 'toBox'
    | 'piece'
    | 'way'
    | 'oneByOne'
    | 'asList'
    | 'back'
    | 'next'
    | 'again'
    | 'tip'
    | 'caution'
    | 'template'
    | 'printCard'
    | 'printRoomy'
  > & {
    readonly mendFirst: Count;
    readonly making: (count: number, recipe: string) => string;
    readonly stepOf: (step: number, of: number) => string;
    readonly kinds: Readonly<Record<StepKind, string>>;
  };
}
