export { countOnSheet, type SheetCount } from './count-on-sheet';
export { type PlanOptions, planSheets } from './plan-sheets';
export type * from './types';
