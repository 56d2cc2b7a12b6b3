export { dxfOf } from './dxf';
export { type FilmPatch, filmPatches } from './film-patches';
export { foldFileOf, foldTextOf } from './fold-format';
export { type FoldUnit, isUnitless } from './fold-frames';
export { sayFoldRefusal } from './fold-words';
export { asItStands, layNet } from './lay-net';
export { linesOf, type NetLine } from './lines';
export {
  caliperTicks,
  fillSizes,
  metricSizes,
  type NamedValues,
  nameValues,
  type Sizing,
} from './name-values';
export { outerRing, ringsOf } from './outline';
export {
  isRoomMeasured,
  type LineChoice,
  type OwnAnswers,
  type OwnLine,
  type OwnReading,
  ownBoxOf,
  readOwnNet,
} from './own-net';
export { pieceAlone } from './plain-lines';
export { type FoldReading, type FoldRefusal, readFold } from './read-fold';
export { svgOf } from './svg';
export type * from './types';
