import { z } from 'zod';
import { contents } from './contents';
import { dressing } from './dressing';
import { favorEvent } from './event';
import { example, id, name, named, note, row, symbolName, whole } from './fields';
import { handout, photo } from './handout';
import { lengthMm } from './lengths';
import { paper, supply, tool } from './stock';
import { cleanNote } from './text';

export type { Contents } from './contents';
export * from './dressing';
export * from './event';

export * from './handout';
export * from './stock';

/**
 * Everything a maker saves, exports or reads: one file format of three kinds (a recipe, an event with what it needs, everything).
 * Strict: an unknown field is refused by name. Lengths in millimetres on whole ticks, money in minor units, caliper in micrometres.
 */
export const FORMAT = 'crease-and-count';
export const SCHEMA = 2;

export const recipe = z.strictObject({
  ...row,
  name,
  styleId: z.string().regex(/^[a-z0-9-]{1,64}$/),
  /** Symbol of the style to millimetres; a symbol left out takes the style's default. */
  sizesMm: named(lengthMm),
  /** Option of the style to the chosen id. */
  options: named(id),
  caliperUm: whole(50, 2000),
  paperId: id.nullable(),
  /** Which face lies up at the bench. */
  faceUp: z.enum(['inside', 'outside']),
  grain: z.enum(['upright', 'around', 'free']),
  dressings: z.array(dressing).max(20),
  notes: note,
  /** What goes inside; the box's own sizes stay what they are until the maker takes a size that fits. */
  contents: contents.optional(),
  /** Symbols that the search for easy marks must leave as they are. */
  held: z.array(symbolName).max(50).optional(),
  /** The marks that working allowances are rounded up to; 1/16 in where none is named. */
  markMm: lengthMm.optional(),
  /** A net of the maker's own as FOLD text; the style is then `own-net`. */
  ownNet: z.string().overwrite(cleanNote).max(1_000_000).optional(),
  handout: handout.optional(),
  example,
});

export const workbookFile = z.strictObject({
  format: z.literal(FORMAT),
  schema: z.literal(SCHEMA),
  kind: z.enum(['recipe', 'event', 'everything']),
  recipes: z.array(recipe).max(5000),
  events: z.array(favorEvent).max(5000),
  papers: z.array(paper).max(1000),
  supplies: z.array(supply).max(1000),
  tools: z.array(tool).max(100),
  photos: z.array(photo).max(2000),
});

export type Recipe = z.infer<typeof recipe>;
export type WorkbookFile = z.infer<typeof workbookFile>;
