import { z } from 'zod';
import { cents, count, example, handAct, id, name, note, percent, row, whole } from './fields';
import { guest, MOST_GUESTS, nameCards } from './guests';
import { lengthMm, marginMm } from './lengths';

const eventLine = z.strictObject({
  id,
  recipeId: id,
  dressingId: id.nullable(),
  /** The paper this line is cut from; null takes the recipe's own. */
  paperId: id.nullable(),
  count: whole(1, 100_000),
  /** Where the count comes from, if guests were counted by the table; the count stays what it says. */
  byTable: z.strictObject({ tables: whole(1, 1000), guests: whole(1, 100) }).optional(),
  /** The count is that of the guests who get this line. */
  byGuests: z.literal(true).optional(),
  /** Other papers that serve as well as the line's own, where a mix is looked for. */
  anyOf: z
    .array(z.strictObject({ paperId: id }))
    .max(9)
    .optional(),
  /** The mix in use: how many of each piece, of the style or the dressing, are cut from which paper or offcut. */
  mix: z
    .array(z.strictObject({ piece: id, paperId: id, count }))
    .max(400)
    .optional(),
});

/** What is spoiled on the way: a share of the order, never less than so many; each act's own share, one on the other; or what does not close. */
const spares = z.strictObject({
  percent,
  atLeast: count,
  byAct: z
    .array(z.strictObject({ act: handAct, percent: whole(0, 90) }))
    .max(20)
    .optional(),
  /** Pieces to practice on, once for each recipe of the event. */
  practice: whole(0, 100).optional(),
  /** Spares by the share of boxes that close when every mark is off by up to this either way, in place of the percentage. */
  offByMm: lengthMm.optional(),
});

/** How fast the maker works; whatever is left out is common practice. */
const pace = z.strictObject({
  /** Their own seconds for an act. */
  seconds: z.array(z.strictObject({ act: handAct, seconds: whole(1, 3600) })).max(20),
  /** Whole boxes they timed, first to last. */
  trialSeconds: z.array(whole(1, 36_000)).max(20),
  /** Time of the doubled piece as a percent of the single one; 100: nothing is learned. */
  learningPercent: whole(50, 100),
  allowancePercent: percent,
  makers: whole(1, 50),
  /** Working minutes in a day, and days left free before the event. */
  dayMinutes: whole(15, 1440),
  daysFree: whole(0, 60),
});

/** The shop's terms for the whole order, as the maker enters them. Percentages of tax in hundredths: 875 is 8.75 %. */
const shopTerms = z.strictObject({
  discounts: z.array(z.strictObject({ fromMinor: cents, percent })).max(10),
  minimumMinor: cents,
  shippingMinor: cents,
  freeShippingFromMinor: cents.nullable(),
  taxHundredths: whole(0, 10_000),
});

/** What they ask for their work: an hourly rate, and a margin on everything. */
const asking = z.strictObject({ hourlyMinor: cents, marginPercent: whole(0, 1000) });

/**
 * How far the batch has come at the bench: for each stage, pieces done and spoiled and the seconds it took. A stage is named
 * `lineId/act` or `act` (all lines together). Kept in the event so that a tap is never lost. Where several devices count, each has its own
 * entry (`by`), which no other writes, and the sum counts: taps on two devices add up in whatever order they meet.
 */
const run = z.strictObject({
  stages: z
    .array(
      z.strictObject({
        stage: z.string().regex(/^[a-z0-9/-]{1,140}$/),
        done: count,
        spoiled: count,
        seconds: whole(0, 10_000_000),
        by: id.optional(),
      }),
    )
    .max(2000),
  /** Lines whose first box was made, measured and found right. */
  firstRight: z.array(id).max(50),
});

/**
 * Ticked off the shopping list, by paper or supply: how many packs or rolls were bought, how many sheets, rolls, pieces or bottles are in
 * them (left out: one each), and whether they were put on hand.
 */
const bought = z.strictObject({
  of: id,
  packs: count,
  units: count.optional(),
  received: z.boolean(),
});

/** A class as its teacher runs it; counts of the event are then what goes into one kit. */
const lesson = z.strictObject({
  /** What the teacher does before the class; cutting the sheets apart always is. All else is the learners'. */
  ahead: z.array(handAct).max(20),
  /** Finished boxes to look at, and copies made before everyone's eyes, of each line. */
  samples: whole(0, 50),
  demonstrations: whole(0, 50),
  /** A learner's time for an act as a percent of the maker's own. */
  learnerPercent: whole(100, 1000),
  startMinute: whole(0, 1439),
  welcomeMinutes: whole(0, 240),
  breakMinutes: whole(0, 240),
  tidyMinutes: whole(0, 240),
  /** The room, drinks and whatever else the class costs as a whole. */
  roomMinor: cents,
});

/** What finished favors are carried in, measured inside, and what may be done with them there. */
const carrier = z.strictObject({
  widthMm: lengthMm,
  depthMm: lengthMm,
  heightMm: lengthMm,
  /** Between two favors. */
  wiggleMm: marginMm,
  /** So many may stand on one another; the maker tries it. */
  layers: whole(1, 10),
  mayLie: z.literal(true).optional(),
});

export const favorEvent = z.strictObject({
  ...row,
  name,
  date: z.iso.date().nullable(),
  lines: z.array(eventLine).max(50),
  spares,
  tapeId: id.nullable(),
  currency: z.string().regex(/^[A-Z]{3}$/),
  notes: note,
  /** Liquid glue in place of tape on the boxes' own joints. */
  glueId: id.nullable().optional(),
  toolId: id.nullable().optional(),
  /** Set for a class: every line's count is what goes into one kit. */
  kits: whole(1, 10_000).nullable().optional(),
  lesson: lesson.optional(),
  pace: pace.optional(),
  terms: shopTerms.optional(),
  asking: asking.optional(),
  /** What matters most where the same sheets can be cut in several ways; left out: fewest strokes. */
  cutFor: z.enum(['fences', 'offcut']).optional(),
  run: run.optional(),
  bought: z.array(bought).max(2000).optional(),
  /** Stays on this device, backups apart, until `shareGuests` is ticked. */
  guests: z.array(guest).max(MOST_GUESTS).optional(),
  shareGuests: z.literal(true).optional(),
  nameCards: nameCards.optional(),
  carry: carrier.optional(),
  example,
});

export type EventLine = z.infer<typeof eventLine>;
export type Spares = z.infer<typeof spares>;
export type Pace = z.infer<typeof pace>;
export type ShopTerms = z.infer<typeof shopTerms>;
export type Lesson = z.infer<typeof lesson>;
export type Run = z.infer<typeof run>;
export type Bought = z.infer<typeof bought>;
export type Carrier = z.infer<typeof carrier>;
export type Asking = z.infer<typeof asking>;
export type FavorEvent = z.infer<typeof favorEvent>;
