import type { Ink } from './types';

/** How an ink looks in black on a grey printer: the same on screen, in SVG and in PDF. */
export interface InkStyle {
  /** What the legend says of it. */
  readonly means: string;
  /** Line width in mm on paper; 0 draws no line. */
  readonly widthMm: number;
  /** Dash and gap lengths in mm on paper, in turn; none is a continuous line. */
  readonly dashMm: readonly number[];
  /** What an area of this ink is filled with. */
  readonly fill: 'none' | 'white' | 'black' | Hatch;
}

/** Parallel lines across an area: one set an angle, `gapMm` apart. */
export interface Hatch {
  readonly anglesDeg: readonly number[];
  readonly gapMm: number;
  readonly widthMm: number;
  /** As for lines; none is continuous. */
  readonly dashMm: readonly number[];
}

// source: ISO 128-2 widths 0.13, 0.18, 0.25, 0.35, 0.5 mm, a wide line twice a narrow one (from memory).
const FINEST = 0.13;
const NARROW = 0.25;
const MIDDLE = 0.35;
const WIDE = 0.5;

// source: Yoshizawa-Randlett notation: valley in dashes, mountain in dash and dot. Lengths our own, long enough to survive a grey printer.
const VALLEY = [3.6, 1.6];
const MOUNTAIN = [5, 1.4, 0.8, 1.4];
const FLAT = [1.2, 1.2];

const HATCHED = { anglesDeg: [45], gapMm: 1.6, widthMm: FINEST, dashMm: [] };
const CROSS_HATCHED = { anglesDeg: [45, 135], gapMm: 4, widthMm: FINEST, dashMm: [] };

export const INKS: Readonly<Record<Ink, InkStyle>> = {
  edge: { means: 'edge of the piece', widthMm: NARROW, dashMm: [], fill: 'none' },
  cut: { means: 'cut', widthMm: WIDE, dashMm: [], fill: 'none' },
  'score-valley': { means: 'score, fold toward you', widthMm: MIDDLE, dashMm: VALLEY, fill: 'none' },
  'score-mountain': { means: 'score, fold away from you', widthMm: MIDDLE, dashMm: MOUNTAIN, fill: 'none' },
  'score-flat': { means: 'score, flat when closed', widthMm: MIDDLE, dashMm: FLAT, fill: 'none' },
  slit: { means: 'slit, from bar to bar', widthMm: WIDE, dashMm: [], fill: 'none' },
  join: { means: 'nothing to do here', widthMm: FINEST, dashMm: FLAT, fill: 'none' },
  glue: { means: 'glue here', widthMm: 0, dashMm: [], fill: HATCHED },
  'glue-below': {
    means: 'glue on the underside',
    widthMm: 0,
    dashMm: [],
    fill: { ...HATCHED, dashMm: [1.6, 1.2] },
  },
  bare: { means: 'glued: leave plain', widthMm: FINEST, dashMm: [], fill: HATCHED },
  covered: {
    means: 'covered when closed',
    widthMm: FINEST,
    dashMm: FLAT,
    fill: { ...HATCHED, gapMm: 3, dashMm: [0.8, 1.6] },
  },
  bleed: { means: 'bleed: let the pattern run to here', widthMm: FINEST, dashMm: [0.8, 0.8], fill: 'none' },
  waste: { means: 'cut away (waste)', widthMm: FINEST, dashMm: [], fill: CROSS_HATCHED },
  dimension: { means: 'measure from the 0', widthMm: FINEST, dashMm: [], fill: 'none' },
  grain: { means: 'grain', widthMm: NARROW, dashMm: [], fill: 'none' },
  paper: { means: 'card', widthMm: 0, dashMm: [], fill: 'white' },
  shade: { means: 'inside', widthMm: FINEST, dashMm: [], fill: 'none' },
  part: { means: 'part', widthMm: WIDE, dashMm: [], fill: 'white' },
  offcut: { means: 'offcut to keep', widthMm: NARROW, dashMm: [6, 1.4, 0.8, 1.4, 0.8, 1.4], fill: 'none' },
  move: { means: 'turn or flip', widthMm: MIDDLE, dashMm: [], fill: 'none' },
  code: { means: 'QR code', widthMm: 0, dashMm: [], fill: 'black' },
  guide: { means: 'guide only', widthMm: FINEST, dashMm: [], fill: 'none' },
};
