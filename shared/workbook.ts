import { z } from 'zod';
import { favorEvent } from '../src/core/rows/event';
import { photo } from '../src/core/rows/handout';
import { recipe } from '../src/core/rows/recipe';
import { paper, supply, tool } from '../src/core/rows/stock';

export * from '../src/core/rows';

/**
 * Everything a maker saves, exports or reads: one file format of three kinds (a recipe, an event with what it needs, everything).
 * Strict: an unknown field is refused by name. Lengths in millimeters on whole ticks, money in minor units, caliper in micrometers.
 */
export const FORMAT = 'crease-and-count';
export const SCHEMA = 2;

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

export type WorkbookFile = z.infer<typeof workbookFile>;
