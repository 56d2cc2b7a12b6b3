export { type Fact, type Reason, sayReason, type Wording } from '../units/reason';
export type { AskingPrice } from './asking';
export { type BoxBeside, boxBeside } from './box-beside';
export type { CostOf, CostSplit, EventCost } from './cost';
export { whyCount, whyPart } from './count-why';
export { netOfRecipe, styleOfRecipe } from './event-boxes';
export { GRAIN_OF_RECIPE } from './event-parts';
export { type EventHours, type Stage, USUAL_PACE } from './hours';
export type { KitList } from './kit-list';
export { perPiece, printMoney } from './money';
export { handSecondsOfBox } from './one-box';
export { type EventPlanOptions, type EventRows, planEvent } from './plan-event';
export type { SheetPlanner } from './plan-papers';
export { type BoughtRow, followShopping, stockPaper, stockSupply, tickOff, unitsOf } from './receive';
export type { RemarkCode } from './remarks';
export type { CutLength, RollFill, RollPlan } from './rolls';
export { addCount, countAt, setFirstRight, spoiledOfLine } from './run-counts';
export { followRun, type StepProgress } from './run-progress';
export {
  type FenceScore,
  type FirstBox,
  listRunSheet,
  type RunSheet,
  type RunStep,
  type RunWork,
} from './run-sheet';
export type { CardLies, CardWork } from './run-stages';
export { type RunWords, STAGE_NAMES, sayRunStep } from './run-words';
export type { OrderSum, OrderWay, OrderWays } from './shop-order';
export type { BoughtPack, ShoppingRow } from './shopping';
export { addSpareKits, addSpares, type MakingCount, type SparesRule } from './spares';
export { benchToolOf, cuttingToolOf, isRolled, sheetAsSold, sheetOfPaper } from './stock-rows';
export type { Sitting, Timetable } from './timetable';
export { whyBoxes, whyCost, whyHours, whySheets } from './totals-why';
export type * from './types';
