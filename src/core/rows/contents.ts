import { z } from 'zod';
import { id, name, whole } from './fields';
import { allergen } from './guests';
import { lengthMm, marginMm } from './lengths';

/**
 * What goes inside, as saved with a recipe and as read by `desk fit`: things, how many of each, how they are wrapped, how they may lie.
 * Measured before wrapping, in millimeters on whole ticks; weights in whole grams.
 */
const cuboid = { widthMm: lengthMm, depthMm: lengthMm, heightMm: lengthMm };

const itemShape = z.discriminatedUnion('shape', [
  z.strictObject({ shape: z.literal('cuboid'), ...cuboid }),
  /** `either`: it may stand or lie, whichever packs better. */
  z.strictObject({
    shape: z.literal('cylinder'),
    diameterMm: lengthMm,
    heightMm: lengthMm,
    lies: z.enum(['standing', 'lying', 'either']),
  }),
  z.strictObject({ shape: z.literal('sphere'), diameterMm: lengthMm }),
  /** Flat: it may stand on edge or lie. */
  z.strictObject({ shape: z.literal('packet'), ...cuboid }),
  /** A bag of sweets, a scarf: upright, and it gives a little. */
  z.strictObject({ shape: z.literal('soft'), ...cuboid }),
  /** A small plant: the pot; the leaves are what sticks out above the rim. */
  z.strictObject({ shape: z.literal('pot'), diameterMm: lengthMm, heightMm: lengthMm }),
]);

export const careFlag = z.enum([
  'food',
  'allergens',
  'choking-food',
  'honey',
  'flame',
  'small-parts',
  'button-cell',
  'moisture',
  'hot',
]);

const item = z.strictObject({
  id,
  name,
  size: itemShape,
  count: whole(1, 500),
  /** Thickness of tissue, cup or film on every side. */
  wrapMm: marginMm,
  /** How far it may stand out above the rim of an open box. */
  aboveRimMm: marginMm,
  thisWayUp: z.boolean(),
  fragile: z.boolean(),
  care: z.array(careFlag).max(careFlag.options.length),
  gramsEach: whole(0, 100_000).nullable(),
  /** What its label names, as the maker read it; left out where nobody has read it yet. */
  allergens: z.array(allergen).max(allergen.options.length).optional(),
});

export const contents = z.strictObject({
  items: z.array(item).max(20),
  /** Air on each axis, in all; null takes the usual for the tenderest thing (rigid 1/16 in, soft 1/8, bagged food 1/4). */
  clearanceMm: marginMm.nullable(),
  /** Which of the ways to lie the maker chose, by its place in the list; the first where none is named. */
  arrangement: whole(0, 100).optional(),
});

export type Item = z.infer<typeof item>;
export type ItemShape = z.infer<typeof itemShape>;
export type Contents = z.infer<typeof contents>;
export type CareFlag = z.infer<typeof careFlag>;
