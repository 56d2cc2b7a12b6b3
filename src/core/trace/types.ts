import type { TracePlace } from './place';

/** A picture to draw over, as it is kept on the device that it was added on: drawn again as a plain picture of so many pixels. */
export interface TracePicture {
  readonly bytes: ArrayBuffer;
  /** As the browser names it: image/webp or image/png. */
  readonly type: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly place: TracePlace;
}
