export { type BestSheetPlan, fillBestSheet, type WorthPart } from './best-sheet';
export { countOnSheet, type SheetCount } from './count-on-sheet';
export { type CutPiece, type CutSequence, type CutStep, sequenceCuts } from './cut-sequence';
export { type PlanOptions, planSheets } from './plan-sheets';
export { checkPlan } from './proof/check-plan';
export type * from './types';
