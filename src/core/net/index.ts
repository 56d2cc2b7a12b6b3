export { dxfOf } from './dxf';
export { filmPatches } from './film-patches';
export { foldFileOf, foldTextOf } from './fold-format';
export { type FoldUnit, isUnitless } from './fold-frames';
export { sayFoldRefusal } from './fold-words';
export { asItStands, layNet } from './lay-net';
export { linesOf } from './lines';
export {
  begunNew,
  fillSizes,
  metricSizes,
  nameValues,
  newOptions,
  newSizes,
  type Sizing,
} from './name-values';

export {
  type LineChoice,
  type OwnLine,
  type OwnReading,
  ownBoxOf,
  readOwnNet,
  toldBy,
} from './own-net';
export { pieceAlone } from './plain-lines';
export { readFold } from './read-fold';
export { svgOf } from './svg';
export type * from './types';
