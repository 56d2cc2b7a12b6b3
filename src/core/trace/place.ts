/** A point of the flat card, millimeters from its lower left corner, y up. */
export type Corner = readonly [x: number, y: number];

/** Where a picture lies under a net: its middle on the card, how large one of its pixels is there, and how far it is turned counter-clockwise. */
export interface TracePlace {
  readonly middle: Corner;
  readonly mmPerPx: number;
  readonly turnDeg: number;
  /** How strongly it shows, from 0 to 1. */
  readonly strength: number;
  readonly shown: boolean;
}

interface Pixels {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A picture between a fingernail and a table wide, so that a slip of the hand can’t lose it. source: our own, mm */
export const LEAST_WIDE_MM = 5;
export const MOST_WIDE_MM = 5000;
/** Points nearer than this are one point tapped twice. source: our own, mm of the card as it is drawn */
const LEAST_APART_MM = 0.5;

/** Faint enough to see the net on it. source: our own */
const FIRST_STRENGTH = 0.35;

/** A new picture: over the whole of a net so wide and high, in its middle. */
export const firstPlace = ({ widthPx, heightPx }: Pixels, wideMm: number, highMm: number): TracePlace => ({
  middle: [wideMm / 2, highMm / 2],
  mmPerPx: within(Math.min(wideMm / widthPx, highMm / heightPx), widthPx),
  turnDeg: 0,
  strength: FIRST_STRENGTH,
  shown: true,
});

const within = (mmPerPx: number, widthPx: number): number =>
  Math.min(MOST_WIDE_MM, Math.max(LEAST_WIDE_MM, mmPerPx * widthPx)) / widthPx;

/** How wide the whole picture is on the card, mm. */
export const widthOf = ({ mmPerPx }: TracePlace, { widthPx }: Pixels): number => mmPerPx * widthPx;

/** The picture made so wide, its middle where it was. */
export const placeByWidth = (place: TracePlace, { widthPx }: Pixels, wideMm: number): TracePlace => ({
  ...place,
  mmPerPx: within(wideMm / widthPx, widthPx),
});

/**
 * The picture made as large as two of its points say, which lie so many millimeters apart in truth; the first stays where it is. Null where
 * both are one point, or the picture would be no picture any more.
 */
export function placeByPoints(
  place: TracePlace,
  { widthPx }: Pixels,
  [a, b]: readonly [Corner, Corner],
  trueMm: number,
): TracePlace | null {
  const apart = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (!(apart >= LEAST_APART_MM && trueMm > 0)) return null;
  const grow = trueMm / apart;
  const mmPerPx = place.mmPerPx * grow;
  if (within(mmPerPx, widthPx) !== mmPerPx) return null;
  const from = (at: 0 | 1) => a[at] + (place.middle[at] - a[at]) * grow;
  return { ...place, mmPerPx, middle: [from(0), from(1)] };
}

/** Moved across and up the card. */
export const moveBy = (place: TracePlace, acrossMm: number, upMm: number): TracePlace => ({
  ...place,
  middle: [place.middle[0] + acrossMm, place.middle[1] + upMm],
});
