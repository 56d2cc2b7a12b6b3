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

/** The picture under a net, and what can be done with it. */
export interface Trace {
  /** Null: none was added, or it is not read yet. */
  readonly picture: TracePicture | null;
  /** It could not be kept, and is gone with this page. */
  readonly unkept: boolean;
  readonly add: (picture: TracePicture) => void;
  readonly lay: (place: TracePlace) => void;
  readonly remove: () => void;
  /** Takes back what was last done to it on this page; null where nothing was. */
  readonly takeBack: (() => void) | null;
}
