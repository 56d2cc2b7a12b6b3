import type { Count, Naming, Texts } from './texts';

/** Texts of the Event page. */
export type EventWords = Texts<
  | 'howManyWhy'
  | 'count'
  | 'begin'
  | 'usedIn'
  | 'lines'
  | 'noLines'
  | 'rules'
  | 'date'
  | 'spares'
  | 'sparesHelp'
  | 'atLeast'
  | 'tape'
  | 'noTape'
  | 'removeLine'
  | 'addLine'
  | 'recipeGone'
  | 'paper'
  | 'noPaper'
  | 'dressing'
  | 'noDressing'
  | 'newBox'
  | 'comesTo'
  | 'toMake'
  | 'hoursWhy'
  | 'glue'
  | 'noGlue'
  | 'tool'
  | 'noTool'
  | 'kits'
  | 'copyLine'
  | 'byTable'
  | 'tables'
  | 'guests'
  | 'onePerGuest'
  | 'sparesHead'
  | 'sparesWhy'
  | 'practice'
  | 'practiceHelp'
  | 'perAct'
  | 'kitsHead'
  | 'kitsWhy'
  | 'forKits'
  | 'notForKits'
  | 'countInKit'
  | 'kitHolds'
  | 'kitWhat'
  | 'kitSize'
  | 'kitOne'
  | 'kitAll'
  | 'printKits'
  | 'paceHead'
  | 'paceWhy'
  | 'whenHead'
  | 'noDate'
  | 'chart'
  | 'stage'
  | 'begins'
  | 'ends'
  | 'working'
  | 'moreTo'
> & {
  readonly copyLineOf: Naming;
  readonly seconds: Naming;
  readonly usualSeconds: (act: string, seconds: number) => string;
  readonly counted: (tables: number, guests: number) => string;
  readonly kitsOf: (kits: number, packing: number) => string;
  readonly wait: (stage: string, minutes: number) => string;
  readonly startOn: (first: string, ready: string) => string;

  readonly howMany: Naming;
  readonly eventOf: Naming;
  readonly ownPaper: Naming;
  readonly countOf: Naming;
  readonly removeLineOf: Naming;
  readonly andSpares: Count;
  readonly ofThem: (ordered: number, spares: number) => string;
  readonly sheetsOf: (sheets: number, paper: string) => string;
  readonly eachFavor: Naming;
  readonly hours: Count;
};
