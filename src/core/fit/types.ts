/**
 * Contents and how they lie. Millimeters as floats: an arrangement is a solid, not a flat coordinate; the inside size it needs is
 * rounded up to ticks once, in `required-inside.ts`. Frame: x to the right, y to the back, z up, from the inner front left corner of the floor.
 */

/** One thing to be given, as measured, before wrapping. Cuboids by width, depth, height; round things by diameter. */
export type Solid =
  | { readonly shape: 'cuboid'; readonly width: number; readonly depth: number; readonly height: number }
  | { readonly shape: 'cylinder'; readonly diameter: number; readonly height: number }
  | { readonly shape: 'sphere'; readonly diameter: number };

/** One thing in its place. `lies` names the axis of a cylinder; a packet may stand turned about the upright by `turnDeg`. */
export type Placed =
  | {
      readonly item: string;
      readonly shape: 'cuboid';
      readonly at: Vec;
      readonly size: Vec;
      readonly turnDeg: number;
    }
  | {
      readonly item: string;
      readonly shape: 'cylinder';
      readonly at: Vec;
      readonly diameter: number;
      readonly height: number;
      readonly lies: 'x' | 'y' | 'z';
    }
  | { readonly item: string; readonly shape: 'sphere'; readonly at: Vec; readonly diameter: number };

/** Cuboids are placed by their least corner (before turning about their own centre), round things by their centre. */
export type Vec = readonly [x: number, y: number, z: number];

/** A way the contents lie, and the cuboid they fill. `exact` only where no smaller cuboid of that family of patterns exists. */
export interface Arrangement {
  readonly pattern: string;
  readonly exact: boolean;
  readonly size: Vec;
  readonly placed: readonly Placed[];
}
