export { MOST_BYTES, type PictureRefusal, readPictureHead } from './picture-head';
export {
  type Corner,
  firstPlace,
  LEAST_WIDE_MM,
  MOST_WIDE_MM,
  moveBy,
  placeByPoints,
  placeByWidth,
  type TracePlace,
  widthOf,
} from './place';
export type { Trace, TracePicture } from './types';
