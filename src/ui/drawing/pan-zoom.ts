/** What part of a drawing is looked at: the middle of the window as a share of the drawing's width and height, and how close. */
export interface Gaze {
  readonly u: number;
  readonly v: number;
  readonly zoom: number;
}

/** Width and height in CSS pixels. */
export interface Pane {
  readonly width: number;
  readonly height: number;
}

export const MOST_ZOOM = 8;
export const WHOLE: Gaze = { u: 0.5, v: 0.5, zoom: 1 };

const between = (least: number, most: number, value: number) => Math.min(most, Math.max(least, value));

/** Keeps the drawing from being pushed out of sight; where it is smaller than the window it stays in the middle. */
export function keepInView({ u, v, zoom }: Gaze, drawn: Pane, window: Pane): Gaze {
  const hold = (share: number, length: number, seen: number) => {
    const slack = Math.max(0, (1 - seen / length) / 2);
    return between(0.5 - slack, 0.5 + slack, share);
  };
  return { u: hold(u, drawn.width, window.width), v: hold(v, drawn.height, window.height), zoom };
}

/** Comes closer (factor over 1) or goes back, keeping the point under the finger where it is; `at` as shares of the drawing. */
export function zoomAbout(gaze: Gaze, factor: number, at: readonly [u: number, v: number]): Gaze {
  const zoom = between(1, MOST_ZOOM, gaze.zoom * factor);
  const share = gaze.zoom / zoom;
  return { u: at[0] + (gaze.u - at[0]) * share, v: at[1] + (gaze.v - at[1]) * share, zoom };
}
