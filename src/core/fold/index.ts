export { anglesDuring, closingStates } from './closing-states';
export { type FoldedFace, foldPiece, middleOf, posesOf, restAngles } from './fold-piece';
export { FLAT, insideOf, type Pose, placeOf } from './pose';
export { roomInside } from './room';
export * from './vector';
