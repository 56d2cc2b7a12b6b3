export { type PictureRefusal, readPictureHead } from './picture-head';
export {
  type Corner,
  firstPlace,
  moveBy,
  placeByPoints,
  placeByWidth,
  type TracePlace,
  widthOf,
} from './place';
export type { TracePicture } from './types';
