import type { At } from '../../plane';

/**
 * One drawing source for screen, SVG and PDF: lines and words in millimeters, y up turned to y down by the renderers.
 * An ink is a meaning, never a color; `src/core/draw/strokes/inks.ts` gives each its width and dash (ISO 128 line types, Yoshizawa-Randlett dashes).
 */
export type Ink =
  | 'edge'
  | 'cut'
  | 'score-valley'
  | 'score-mountain'
  | 'score-flat'
  | 'slit'
  | 'join'
  | 'glue'
  | 'glue-below'
  | 'bare'
  | 'covered'
  | 'bleed'
  | 'waste'
  | 'dimension'
  | 'grain'
  | 'paper'
  | 'shade'
  | 'part'
  | 'offcut'
  | 'guide'
  | 'code'
  | 'move';

export type Mark =
  /** Open run of straight pieces. */
  | { readonly kind: 'line'; readonly ink: Ink; readonly points: readonly At[]; readonly key?: string }
  /** Closed ring, with holes; filled as its ink says (paper, hatch, none). */
  | {
      readonly kind: 'area';
      readonly ink: Ink;
      readonly ring: readonly At[];
      readonly holes?: readonly (readonly At[])[];
      readonly key?: string;
    }
  /** A true arc, `sweep` degrees from a, counter-clockwise positive. */
  | {
      readonly kind: 'arc';
      readonly ink: Ink;
      readonly centre: At;
      readonly radius: number;
      readonly fromDeg: number;
      readonly sweepDeg: number;
      readonly key?: string;
    }
  | {
      readonly kind: 'text';
      readonly at: At;
      readonly text: string;
      readonly sizeMm: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly turnDeg?: number;
      readonly bold?: boolean;
      readonly key?: string;
    };

/** `key` ties a mark to its row in the table beside the drawing; the same key lights up everywhere. */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  /** One sentence for those who cannot see it. */
  readonly description: string;
  readonly marks: readonly Mark[];
}
