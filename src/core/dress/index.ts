export { bandLength, fitPiece, layerOn } from './fit-piece';
export { type BoxSize, outsideSize } from './outside-size';
export { type FlatSize, panelSize } from './panel-size';
export { bowLength, crossWrap, ringWrap, tieLength } from './tie-length';
