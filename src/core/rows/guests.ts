import { z } from 'zod';
import { id, name, whole, words } from './fields';
import { lengthMm, marginMm } from './lengths';

/** The most guests one event keeps. Source: our own. */
export const MOST_GUESTS = 1000;

/** Foods that labels must name in the United States. source: FALCPA and FASTER acts, from a secondary text */
export const allergen = z.enum([
  'milk',
  'eggs',
  'fish',
  'shellfish',
  'tree nuts',
  'peanuts',
  'wheat',
  'soybeans',
  'sesame',
]);

/** One guest: where they sit, what they need, and which line of the event is theirs; null takes the first line. */
export const guest = z.strictObject({
  id,
  name,
  table: words,
  needs: words,
  lineId: id.nullable(),
});

/** Sheets of ready-cut labels, measured from the sheet's upper left corner; a step is from one label to the next. */
const labelSheet = z.strictObject({
  across: whole(1, 20),
  down: whole(1, 40),
  leftMm: marginMm,
  topMm: marginMm,
  stepAcrossMm: lengthMm,
  stepDownMm: lengthMm,
});

/** How the names are printed: what on, how large at most, and what stands below. */
export const nameCards = z.strictObject({
  kind: z.enum(['tag', 'place-card', 'label']),
  widthMm: lengthMm,
  heightMm: lengthMm,
  /** Type size of a name at most. */
  nameMm: lengthMm,
  showTable: z.boolean(),
  below: words,
  /** The paper they are printed on; null is what lies in the printer. */
  paperId: id.nullable(),
  labels: labelSheet.optional(),
});

export type Guest = z.infer<typeof guest>;
export type Allergen = z.infer<typeof allergen>;
export type NameCards = z.infer<typeof nameCards>;
export type LabelSheet = z.infer<typeof labelSheet>;
