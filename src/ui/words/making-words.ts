import type { StepKind } from '../../core/bench';
import type { CostOf, ShoppingRow } from '../../core/plan';
import type { BuyingWords } from './buying-words';
import type { ContentsWords } from './contents-words';
import type { DressingWords } from './dressing-words';
import type { EventWords } from './event-words';
import type { HandoutWords } from './handout-words';
import type { MarksWords } from './marks-words';
import type { HoursWords, RunPageWords } from './run-words';
import type { Count, Naming, Texts } from './texts';

type Unit = ShoppingRow['unit'];

/** Texts of the pages of a workbook. */
export interface MakingWords {
  readonly contents: ContentsWords;
  readonly marks: MarksWords;
  readonly dressing: DressingWords;
  readonly handout: HandoutWords;
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
  > & { readonly gsm: Count; readonly sides: Texts<'width' | 'depth' | 'height'> };
  readonly event: EventWords;
  readonly sheets: Texts<
    | 'needsCount'
    | 'needsCountWhy'
    | 'toEvent'
    | 'working'
    | 'proven'
    | 'provenShort'
    | 'letter'
    | 'part'
    | 'size'
    | 'count'
    | 'cuts'
    | 'offcut'
    | 'offcuts'
    | 'compare'
    | 'paper'
    | 'sheetsHead'
    | 'toBuy'
    | 'change'
    | 'doesNotFit'
    | 'noPrice'
    | 'inUse'
    | 'use'
    | 'noPapers'
    | 'noPapersWhy'
    | 'toShelf'
    | 'oneSheet'
    | 'planMany'
    | 'print'
  > & {
    readonly sheetsOf: (sheets: number, paper: string) => string;
    readonly bounded: Count;
    readonly boundedShort: Count;
    readonly partsFrom: Naming;
    readonly everySheet: Count;
    readonly layout: (number: number, sheets: number) => string;
    readonly gives: (count: number, letter: string, name: string) => string;
    readonly cut: Readonly<Record<'upright' | 'level', Naming>>;
    readonly frees: (letters: readonly string[]) => string;
    readonly fromOne: (count: number, piece: string, paper: string) => string;
  };
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
  > & {
    readonly mendFirst: Count;
    readonly making: (count: number, recipe: string) => string;
    readonly stepOf: (step: number, of: number) => string;
    readonly kinds: Readonly<Record<StepKind, string>>;
  };
}
