export { type Fact, type Reason, sayReason, type Wording } from '../units/reason';
export type { CostOf, CostSplit, EventCost } from './buying/cost';
export { decimalsOf, perPiece, printMoney } from './buying/money';
export { type BoughtRow, followShopping, stockPaper, stockSupply, tickOff, unitsOf } from './buying/receive';
export type { CutLength, RollFill, RollPlan } from './buying/rolls';
export type { OrderSum, OrderWay, OrderWays } from './buying/shop-order';
export type { BoughtPack, ShoppingRow } from './buying/shopping';
export { countReason } from './buying/shopping-needs';
export {
  benchToolOf,
  cutMarkOf,
  cuttingToolOf,
  isRolled,
  sheetAsSold,
  sheetOfPaper,
} from './buying/stock-rows';
export type { CarriedLine, CarryPlan } from './carry/plan-carry';
export type { BringItem } from './class/bring';
export type { LessonPlan, LessonStep } from './class/lesson';
export { lessonOf, USUAL_LESSON } from './class/usual-lesson';
export { ACCURACIES, nameAccuracy } from './event/accuracy';
export type { AskingPrice } from './event/asking';
export { type BoxBeside, boxBeside } from './event/box-beside';
export { netOfRecipe, styleOfRecipe } from './event/event-boxes';
export { GRAIN_OF_RECIPE } from './event/event-parts';
export type { KitList } from './event/kit-list';
export { handSecondsOfBox } from './event/one-box';
export { type EventPlanOptions, type EventRows, planEvent } from './event/plan-event';
export { demandOf, type SheetPlanner } from './event/plan-papers';
export { leftOutOf, type RemarkCode } from './event/remarks';
export { addSpareKits, addSpares, type MakingCount, type SparesRule } from './event/spares';
export type * from './event/types';
export { countedByGuests, guestsByLine, lineOfGuest, withGuests } from './guests/guest-counts';
export { type GuestTable, tablesOf } from './guests/tables';
export { favorNames, usualCards } from './guests/usual-cards';
export { type EventMix, MIX_WAYS, type MixWay, mixEvent, papersOfLine } from './mix/mix-of-event';
export type { MixPlan } from './mix/types';
export { type WholeSolver, wholeSolverOf } from './mix/whole-program';
export { timeOfDay } from './run/calendar-day';
export { type EventHours, type Stage, USUAL_PACE } from './run/hours';
export { oneSetting, type SingleStep } from './run/one-setting';
export { addCount, countAt, setFirstRight, spoiledOfLine } from './run/run-counts';
export { type BatchProgress, batchProgress, followRun, type StepProgress } from './run/run-progress';
export {
  type FenceScore,
  type FirstBox,
  listRunSheet,
  type RunSheet,
  type RunStep,
  type RunWork,
} from './run/run-sheet';
export type { CardLies, CardWork } from './run/run-stages';
export { type RunWords, STAGE_NAMES, sayRunStep } from './run/run-words';
export type { Sitting, Timetable } from './run/timetable';
export {
  inSeason,
  papersShared,
  planSeason,
  type SeasonPaper,
  type SeasonPlan,
  sumSeason,
} from './season/plan-season';
export { repeatEvent } from './season/repeat-event';
export { partsTogether } from './season/together';
export { whyCount, whyPart } from './why/count-why';
export { whyBoxes, whyCost, whyHours, whySheets } from './why/totals-why';
