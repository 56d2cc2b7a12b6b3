export { arrangeContents } from './arrange';
export { checkArrangement } from './check-arrangement';
export { type EasyMarkQuestion, type EasyRow, findEasyMarks } from './easy-marks';
export { type FitQuestion, type FitRow, fitContents, type NeededRoom, neededRooms } from './fit-contents';
export { turnToFit } from './packet-diagonal';
export { clearanceOf, gramsOf, requiredInside } from './required-inside';
export { estimateBottom } from './strength';
export type * from './types';
