export { type BestSheetPlan, fillBestSheet, type WorthPart } from './best-sheet';
export { type CountInSight, countAtOnce } from './count-at-once';
export { countOnSheet, type SheetCount } from './count-on-sheet';
export { type CutPiece, type CutSequence, type CutStep, sequenceCuts } from './cut-sequence';

export { type HandWay, waysByHand } from './hand-ways';

export {
  type Nest,
  type NestedPart,
  nestOnSheet,
  type OutlinePart,
} from './interlock/nest-sheet';
export { nestStrip, type StripPlace } from './interlock/nest-strip';
export { type Quarter, turnCorner } from './interlock/outline';
export { type PlanMemory, planSheets } from './plan-sheets';
export { checkPlan } from './proof/check-plan';
export { sheetsEach } from './sheets-each';
export type * from './types';
export { waysToCount } from './ways-to-count';
