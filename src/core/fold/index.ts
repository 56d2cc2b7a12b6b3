export { type ClosedPiece, closePiece, closingTolerance, flatRing } from './closed-piece';
export { type ActHits, followClosing } from './closing/closing-path';
export { anglesDuring, closingStates } from './closing/closing-states';
export { collisions, platesOf } from './collisions';
export { type FoldedFace, foldPiece, middleOf, posesOf, restAngles } from './fold-piece';
export { layersOf } from './layers';
export { FLAT, insideOf, type Pose, placeOf } from './pose';
export { roomInside } from './room';
export * from './vector';
