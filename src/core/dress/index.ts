export { placePieces, type SizedPiece, sizePieces } from './dress-box';
export { bandLength, fitPiece, girthOf, layerOn, revealsOf } from './fit-piece';
export { type BoxSize, outsideSize } from './outside-size';
export { type FlatBox, type FlatSize, panelBox, panelSize, windowBox, windowSize } from './panel-size';
export { movedOnto, overhangOf, type PlacedPiece, placePiece } from './place-piece';
export { bowLength, crossWrap, ringWrap, tieLength } from './tie-length';
