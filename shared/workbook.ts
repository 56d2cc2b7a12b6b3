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
export const SCHEMA = 3;

/** Most rows of each table in one file; a backup of more goes into several files. Source: our own. */
export const FILE_ROWS = {
  recipes: 5000,
  events: 5000,
  papers: 1000,
  supplies: 1000,
  tools: 100,
  photos: 2000,
};

export const workbookFile = z.strictObject({
  format: z.literal(FORMAT),
  schema: z.literal(SCHEMA),
  kind: z.enum(['recipe', 'event', 'everything']),
  recipes: z.array(recipe).max(FILE_ROWS.recipes),
  events: z.array(favorEvent).max(FILE_ROWS.events),
  papers: z.array(paper).max(FILE_ROWS.papers),
  supplies: z.array(supply).max(FILE_ROWS.supplies),
  tools: z.array(tool).max(FILE_ROWS.tools),
  photos: z.array(photo).max(FILE_ROWS.photos),
});

export type WorkbookFile = z.infer<typeof workbookFile>;
