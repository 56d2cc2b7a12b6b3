export { placePieces, type SizedPiece, sizePieces } from './dress-box';
export { bandLength, fitPiece, girthOf, layerOn, revealsOf } from './fit-piece';
export { insertCuts, insertEase, insertPlan, withCells } from './inserts';
export { type BoxSize, type Outside, outsideSize } from './outside-size';
export { type FlatSize, panelSize, windowSize } from './panel-size';
export { movedOnto, overhangOf, placePiece } from './place-piece';
export { type PrintWay, printWayOf, printWayOn, turnedPrint } from './print-way';
export { bowLength, tieLength, wrapLength } from './tie-length';
export { dressSteps, wornOf } from './worn-dressing';
