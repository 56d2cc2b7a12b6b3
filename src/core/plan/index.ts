export { netOfRecipe } from './event-boxes';
export { printMoney } from './money';
export { type EventPlanOptions, type EventRows, planEvent } from './plan-event';
export type { SheetPlanner } from './plan-papers';
export { type Fact, type Reason, sayReason, type Wording } from './reason';
export type { CutLength, RollFill, RollPlan } from './rolls';
export { addSpares, type SparesRule } from './spares';
export { benchToolOf, cuttingToolOf, sheetOfPaper } from './stock-rows';
export type * from './types';
