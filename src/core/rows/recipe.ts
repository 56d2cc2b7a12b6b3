import { z } from 'zod';
import { contents } from './contents';
import { dressing } from './dressing';
import { example, id, name, named, note, row, symbolName, whole } from './fields';
import { handout } from './handout';
import { lengthMm } from './lengths';
import { cleanNote } from './text';

/** One box as its maker saves it: a style, its sizes, the card, what goes in and what goes on. Lengths in millimeters on whole ticks. */
export const recipe = z.strictObject({
  ...row,
  name,
  styleId: z.string().regex(/^[a-z0-9-]{1,64}$/),
  /** Symbol of the style to millimeters; a symbol left out takes the style's default. */
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
  /** A style of the maker's own as the text of its file; `styleId` is then made from this text. */
  ownStyle: z.string().overwrite(cleanNote).max(200_000).optional(),
  handout: handout.optional(),
  example,
});

export type Recipe = z.infer<typeof recipe>;
