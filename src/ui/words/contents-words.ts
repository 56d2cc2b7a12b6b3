import type { BottomAdvice } from '../../core/fit';
import type { CareFlag, ItemShape } from '../../core/rows/contents';
import type { Count, Naming, Texts } from './texts';

/** Texts of the Contents page. */
export type ContentsWords = Texts<
  | 'noRecipe'
  | 'pickBox'
  | 'things'
  | 'nothingYet'
  | 'pickThing'
  | 'pickThingHelp'
  | 'pickNone'
  | 'measureThing'
  | 'newThing'
  | 'name'
  | 'shape'
  | 'width'
  | 'depth'
  | 'height'
  | 'diameter'
  | 'long'
  | 'lies'
  | 'howMany'
  | 'wrap'
  | 'wrapHelp'
  | 'aboveRim'
  | 'aboveRimHelp'
  | 'manner'
  | 'thisWayUp'
  | 'fragile'
  | 'care'
  | 'grams'
  | 'gramsHelp'
  | 'remove'
  | 'measureYours'
  | 'air'
  | 'airUsual'
  | 'airOwn'
  | 'ways'
  | 'waysNone'
  | 'way'
  | 'among'
  | 'exact'
  | 'notExact'
  | 'chosen'
  | 'choose'
  | 'findMarks'
  | 'why'
  | 'working'
  | 'inBox'
  | 'goesIn'
  | 'tooSmall'
  | 'setSizes'
  | 'ownNetStands'
  | 'strength'
  | 'weigh'
  | 'noPromise'
  | 'sagUnknown'
  | 'cautions'
> & {
  readonly contentsOf: Naming;
  readonly source: Naming;
  readonly ruleOfThumb: string;
  readonly shapes: Readonly<Record<ItemShape['shape'], string>>;
  readonly lie: Texts<'standing' | 'lying' | 'either'>;
  readonly cares: Readonly<Record<CareFlag, string>>;
  readonly airKinds: Texts<'rigid' | 'soft' | 'baggedFood' | 'own'>;
  readonly airIs: (length: string, kind: string) => string;
  readonly needs: (size: string) => string;
  readonly side: (side: string, things: string, air: string, need: string) => string;
  readonly scoreToScore: (style: string, forms: readonly [string, string, string], caliper: string) => string;
  readonly short: (side: string, has: string, need: string) => string;
  readonly passes: (way: string, clear: string) => string;
  readonly blocked: (way: string, clear: string) => string;
  readonly flapsTaken: Naming;
  readonly closedTop: Naming;
  readonly rimTooLow: (item: string, has: string, least: string) => string;
  readonly weighs: (grams: number) => string;
  readonly stiffness: (caliper: string) => string;
  readonly stiffnessWhy: (modulus: string, caliper: string, value: string) => string;
  readonly sagsUnder: Naming;
  readonly sag: Naming;
  readonly sagWhy: (load: string, span: string, stiffness: string, layers: number) => string;
  readonly joints: (tape: string, area: string, strips: number) => string;
  readonly jointsWhy: (parts: readonly string[]) => string;
  readonly advice: Readonly<Record<BottomAdvice, string>>;
  readonly countOf: Count;
  readonly table: string;
  readonly editOf: Naming;
  readonly removeOf: Naming;
  readonly waysLeft: Count;
};
