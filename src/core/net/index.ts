export { layNet } from './lay-net';
export { caliperTicks, fillSizes, type NamedValues, nameValues, type Sizing } from './name-values';
export { outerRing, ringsOf } from './outline';
export type * from './types';
