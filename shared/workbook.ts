import { z } from 'zod';
import { lengthMm, marginMm, unsigned } from './lengths';
import { cleanLine, cleanNote } from './text';

/**
 * Everything a maker saves, exports or reads: one file format of three kinds (a recipe, an event with what it needs, everything).
 * Strict: an unknown field is refused by name. Lengths in millimetres on whole ticks, money in minor units, caliper in micrometres.
 */
export const FORMAT = 'crease-and-count';
export const SCHEMA = 1;

export const id = z.string().regex(/^[a-z0-9-]{1,64}$/);
const words = z.string().overwrite(cleanLine).max(200);
const name = z.string().overwrite(cleanLine).min(1).max(200);
const note = z.string().overwrite(cleanNote).max(4000);
const count = z.int().min(0).max(100_000).overwrite(unsigned);
const cents = z.int().min(0).max(100_000_000).overwrite(unsigned);
const symbolName = z.string().regex(/^[a-zA-Z][a-zA-Z0-9]{0,31}$/);

/** What every saved row carries: its id, a revision that only grows, and when it was made and last changed (ISO 8601, for showing only). */
const row = {
  id,
  rev: z.int().min(0).overwrite(unsigned),
  createdAt: z.iso.datetime(),
  changedAt: z.iso.datetime(),
};

/** A cut rectangle that goes with each box: a liner behind the contents, later layers, bands and tags. */
export const dressingPiece = z.strictObject({
  id,
  kind: z.enum(['liner', 'layer', 'band', 'tag']),
  name: words,
  widthMm: lengthMm,
  heightMm: lengthMm,
  perBox: z.int().min(1).max(100),
  grain: z.enum(['along-width', 'along-height', 'free']),
  paperId: id.nullable(),
});

export const dressing = z.strictObject({ id, name: words, pieces: z.array(dressingPiece).max(50) });

export const recipe = z.strictObject({
  ...row,
  name,
  styleId: z.string().regex(/^[a-z0-9-]{1,64}$/),
  /** Symbol of the style to millimetres; a symbol left out takes the style's default. */
  sizesMm: z.record(symbolName, lengthMm),
  /** Option of the style to the chosen id. */
  options: z.record(symbolName, id),
  caliperUm: z.int().min(50).max(2000),
  paperId: id.nullable(),
  /** Which face lies up at the bench. */
  faceUp: z.enum(['inside', 'outside']),
  grain: z.enum(['upright', 'around', 'free']),
  dressings: z.array(dressing).max(20),
  notes: note,
});

export const pack = z.strictObject({ sheets: z.int().min(1).max(10_000), priceMinor: cents });

export const paper = z.strictObject({
  ...row,
  name,
  colour: z.string().regex(/^#[0-9a-f]{6}$/),
  /** The true, measured sheet. */
  acrossMm: lengthMm,
  upMm: lengthMm,
  grain: z.enum(['across', 'up', 'none']),
  gsm: z.int().min(30).max(1000),
  caliperUm: z.int().min(50).max(2000),
  squaringMm: z.strictObject({ left: marginMm, right: marginMm, near: marginMm, far: marginMm }),
  packs: z.array(pack).max(10),
  onHandSheets: count,
});

/** Tape, ribbon, glue: sold by the roll of so much length. */
export const supply = z.strictObject({
  ...row,
  name,
  kind: z.enum(['tape', 'ribbon']),
  widthMm: lengthMm,
  rollMm: z.number().min(1).max(1_000_000),
  priceMinor: cents,
  onHandRolls: count,
});

export const tool = z.strictObject({
  ...row,
  name,
  kind: z.enum(['fence', 'grooves']),
  unit: z.enum(['in', 'mm']),
  finestMarkMm: lengthMm,
  reachMm: lengthMm,
  longestCutMm: lengthMm,
  stack: z.int().min(1).max(50),
});

export const eventLine = z.strictObject({
  id,
  recipeId: id,
  dressingId: id.nullable(),
  /** The paper this line is cut from; null takes the recipe's own. */
  paperId: id.nullable(),
  count: z.int().min(1).max(100_000),
});

export const spares = z.strictObject({ percent: z.int().min(0).max(100), atLeast: count });

export const favorEvent = z.strictObject({
  ...row,
  name,
  date: z.iso.date().nullable(),
  lines: z.array(eventLine).max(50),
  spares,
  tapeId: id.nullable(),
  currency: z.string().regex(/^[A-Z]{3}$/),
  notes: note,
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
});

export type DressingPiece = z.infer<typeof dressingPiece>;
export type Dressing = z.infer<typeof dressing>;
export type Recipe = z.infer<typeof recipe>;
export type Paper = z.infer<typeof paper>;
export type Supply = z.infer<typeof supply>;
export type Tool = z.infer<typeof tool>;
export type EventLine = z.infer<typeof eventLine>;
export type FavorEvent = z.infer<typeof favorEvent>;
export type WorkbookFile = z.infer<typeof workbookFile>;
