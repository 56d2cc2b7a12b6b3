export { dxfOf } from './dxf';
export { foldFileOf, foldTextOf } from './fold-format';
export { layNet } from './lay-net';
export { linesOf, type NetLine } from './lines';
export { caliperTicks, fillSizes, type NamedValues, nameValues, type Sizing } from './name-values';
export { outerRing, ringsOf } from './outline';
export { type FoldReading, type FoldRefusal, readFold } from './read-fold';
export { svgOf } from './svg';
export type * from './types';
