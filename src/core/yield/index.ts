export { countOnSheet, type SheetCount } from './count-on-sheet';
export { type CutPiece, type CutSequence, type CutStep, sequenceCuts } from './cut-sequence';
export { type PlanOptions, planSheets } from './plan-sheets';
export type * from './types';
