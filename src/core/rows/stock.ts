import { z } from 'zod';
import { cents, count, example, id, name, row, whole } from './fields';
import { lengthMm, marginMm } from './lengths';

/** For every `buy` paid for, `free` more come with them. */
const offer = z.strictObject({ buy: whole(1, 100), free: whole(1, 100) });

const pack = z.strictObject({
  sheets: whole(1, 10_000),
  priceMinor: cents,
  offer: offer.optional(),
});

export const paper = z.strictObject({
  ...row,
  example,
  name,
  colour: z.string().regex(/^#[0-9a-f]{6}$/),
  /** The true, measured sheet. */
  acrossMm: lengthMm,
  upMm: lengthMm,
  grain: z.enum(['across', 'up', 'none']),
  /** Its print stands only one way: up the sheet. */
  oneWay: z.literal(true).optional(),
  gsm: whole(30, 1000),
  caliperUm: whole(50, 2000),
  squaringMm: z.strictObject({ left: marginMm, right: marginMm, near: marginMm, far: marginMm }),
  packs: z.array(pack).max(10),
  onHandSheets: count,
  /** The paper that this was left over from; small parts of that paper are cut from it first. */
  offcutOfId: id.optional(),
});

/** Tape, ribbon, twine: sold by the roll of so much length. */
const rollSupply = z.strictObject({
  ...row,
  example,
  name,
  kind: z.enum(['tape', 'ribbon', 'twine']),
  widthMm: lengthMm,
  rollMm: z.number().min(1).max(1_000_000),
  priceMinor: cents,
  offer: offer.optional(),
  onHandRolls: count,
  /** Of every roll, what is lost to trimmed ends and false starts; nothing if left out. */
  wastePercent: whole(0, 50).optional(),
});

/** Seals, clips, foam squares, bags, sweets: sold by the pack, used by the piece. */
const pieceSupply = z.strictObject({
  ...row,
  example,
  name,
  kind: z.enum(['closure', 'mount', 'wrap', 'contents']),
  packs: z
    .array(z.strictObject({ pieces: whole(1, 100_000), priceMinor: cents, offer: offer.optional() }))
    .max(10),
  onHandPieces: count,
});

/** Liquid glue, by the bottle; `gramsPerSquareMetre` is how thick it is spread, wet. */
const glueSupply = z.strictObject({
  ...row,
  example,
  name,
  kind: z.literal('glue'),
  bottleGrams: whole(1, 10_000),
  gramsPerSquareMetre: whole(1, 1000),
  pressMinutes: whole(0, 1440),
  dryMinutes: whole(0, 10_080),
  priceMinor: cents,
  onHandBottles: count,
});

export const supply = z.discriminatedUnion('kind', [rollSupply, pieceSupply, glueSupply]);

export const tool = z.strictObject({
  ...row,
  example,
  name,
  kind: z.enum(['fence', 'grooves']),
  unit: z.enum(['in', 'mm']),
  finestMarkMm: lengthMm,
  reachMm: lengthMm,
  longestCutMm: lengthMm,
  stack: whole(1, 50),
  /** Where the fixed grooves of a scoring board lie, from its fence; only for `grooves`. */
  groovesMm: z.array(lengthMm).max(200).optional(),
  /** How far the scoring stylus stands from the blade or the next stylus, where a tool carries both. */
  stylusMm: lengthMm.optional(),
  /** What one cut turns to dust: a saw or a laser; a blade takes nothing. */
  kerfMm: lengthMm.optional(),
  /** Each piece may be turned a quarter so often between its cuts (trimming one part aside); as often as it takes if not said. */
  quarterTurns: z.union([z.literal(1), z.literal(2)]).optional(),
  /** The card shows the fence at the other hand. */
  leftHanded: z.boolean().optional(),
});

export type Offer = z.infer<typeof offer>;
export type Paper = z.infer<typeof paper>;
export type RollSupply = z.infer<typeof rollSupply>;
export type PieceSupply = z.infer<typeof pieceSupply>;
export type GlueSupply = z.infer<typeof glueSupply>;
export type Supply = z.infer<typeof supply>;
export type Tool = z.infer<typeof tool>;
