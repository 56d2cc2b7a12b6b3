import type { Count, Naming, Texts } from './texts';

/** Texts of the Sheets page. */
export type SheetsWords = Texts<
  | 'needsCount'
  | 'needsCountWhy'
  | 'toEvent'
  | 'working'
  | 'stillCounting'
  | 'bettering'
  | 'settle'
  | 'proven'
  | 'provenShort'
  | 'letter'
  | 'part'
  | 'size'
  | 'count'
  | 'cuts'
  | 'offcut'
  | 'offcutsHead'
  | 'offcutsWhy'
  | 'offcutLeast'
  | 'offcutLeastHelp'
  | 'shelve'
  | 'compare'
  | 'paper'
  | 'sheetsHead'
  | 'perSheet'
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
  | 'back'
  | 'next'
  | 'stepper'
  | 'turnFirst'
  | 'squareStep'
  | 'cutOn'
  | 'recount'
  | 'whatIf'
  | 'whatIfWhy'
  | 'ifWhat'
  | 'ifNothing'
  | 'ifSmaller'
  | 'ifUnsquared'
  | 'ifSquared'
  | 'ifSheet'
  | 'whichSize'
  | 'smallerBy'
  | 'smallerHelp'
  | 'squareBy'
  | 'squareHelp'
  | 'whichSheet'
  | 'moneyUnknown'
  | 'interlock'
  | 'interlockWhy'
  | 'notOnTrimmer'
  | 'nestPiece'
  | 'nestGap'
  | 'nestGapHelp'
  | 'nestStart'
  | 'nestBusy'
  | 'nestCancel'
  | 'noGain'
  | 'nestCaution'
  | 'mix'
  | 'mixWhy'
  | 'mixInUse'
  | 'mixOff'
  | 'mixStart'
  | 'mixCancel'
  | 'mixBusy'
  | 'mixStale'
  | 'mixProven'
  | 'mixProvenKind'
  | 'mixOne'
  | 'mixTwo'
  | 'mixAny'
  | 'mixBoxes'
  | 'mixLeft'
  | 'mixCannot'
  | 'useMix'
> & {
  readonly sheetsOf: (sheets: number, paper: string) => string;
  readonly bounded: Count;
  readonly boundedShort: Count;
  readonly partsFrom: Naming;
  readonly everySheet: Count;
  readonly layout: (number: number, sheets: number) => string;
  readonly gives: (count: number, letter: string, name: string) => string;
  readonly frees: (letters: readonly string[]) => string;
  readonly fromOne: (count: number, piece: string, paper: string) => string;
  /** Counts on one sheet: lying one way, the other, and mixed. */
  readonly bothWays: (straight: number, turned: number, mixed: number) => string;
  readonly withGrain: (count: number) => string;
  readonly step: (name: string, of: string) => string;
  readonly fence: Naming;
  readonly becomes: (keep: string, other: string) => string;
  readonly pace: (strokes: number, rounds: number, stack: number, fences: number, turns: number) => string;
  readonly points: (mark: string, points: number) => string;
  readonly pointsMost: Count;
  readonly pointsAll: (total: string) => string;
  readonly pointsTooFew: (sheets: number, hold: string) => string;
  readonly lot: (number: number, size: string, count: number) => string;
  readonly offcutName: (paper: string, size: string) => string;
  readonly onShelf: Count;
  readonly sheetsDiffer: (now: number, then: number) => string;
  readonly moneyDiffers: (now: string, then: string, difference: string, dearer: boolean) => string;
  readonly nested: (count: number, boxed: number) => string;
  readonly nestSheets: (count: number, nested: number, boxed: number) => string;
  readonly nestMost: Count;
  readonly nestTitle: (piece: string, paper: string) => string;
  readonly saveAs: Naming;
  readonly mayComeFrom: Naming;
  readonly mixBounded: Naming;
  readonly mixCheapest: (money: string, proof: string) => string;
  readonly mixSheets: (sheets: number, paper: string, layouts: number) => string;
  readonly mixShare: (line: string, boxes: number, paper: string) => string;
  readonly mixLeftOf: (sheets: number, paper: string) => string;
};
