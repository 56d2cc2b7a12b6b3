export type { Contents } from './contents';
export * from './dressing';
export * from './event';
export * from './guests';
export * from './handout';
export * from './recipe';
export * from './stock';
