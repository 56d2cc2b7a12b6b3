export { arrangeContents } from './arrange';
export { cellsOf } from './cells-of';
export { checkArrangement } from './check-arrangement';
export {
  type EasyCandidate,
  type EasyMarkQuestion,
  type EasyRow,
  easyCandidates,
  findEasyMarks,
} from './easy-marks';
export {
  type FamilyEnd,
  type FamilyMember,
  type FamilyQuestion,
  type FamilyRule,
  findFamily,
  type Room,
} from './family';
export { type FitQuestion, type FitRow, fitContents, type NeededRoom, neededRooms } from './fit-contents';
export { type Opening, openingOf, type Protrusion, passesOpening, protrusionsOf } from './opening';
export { turnToFit } from './packet-diagonal';
export type { MarkTool, ReadMark } from './rate-marks';
export { type ClearanceKind, clearanceKindOf, clearanceOf, gramsOf, requiredInside } from './required-inside';
export { costOfRow, type RowCost } from './row-cost';
export type { YieldMemo } from './sheets-per-box';
export {
  type BottomAdvice,
  type BottomEstimate,
  bottomPlate,
  estimateBottom,
  TYPICAL_MODULUS_GPA,
} from './strength';
export { newSizesForRoom, sizesForRoom } from './symbol-tries';
export { type ChosenRow, isTrade, type RowMerit, threeRows } from './three-rows';
export type * from './types';
export { type WayOut, whatWouldFit } from './what-would-fit';
