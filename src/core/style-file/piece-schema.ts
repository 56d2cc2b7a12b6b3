import '../rows/jitless';
import { z } from 'zod';
import { id } from '../rows/fields';
import { cleanLine, isSeen } from '../rows/text';
import { ROLES } from '../styles/language/roles';
import type { EdgeName } from '../styles/language/types';

/** How much one style may hold. source: our own, several times the largest style here */
export const MOST = { named: 40, panels: 60, pieces: 6, ways: 64, list: 40, corners: 24, sides: 24 };

/** Every object has these names from the start, so that nothing may be called by them. */
const TAKEN: ReadonlySet<string> = new Set(Object.getOwnPropertyNames(Object.prototype));

const NAME = /^[a-z][a-zA-Z0-9]{0,31}$/;
/** A linear form; figures of at most six places keep its fractions exact. */
const FORM = /^(?!.*\d{7})[a-zA-Z0-9 ./+-]+$/;
const EDGE = /^[a-z][a-zA-Z0-9]{0,31}\.(?:left|right|up|down|e\d{1,2})$/;
const EDGE_NAME = /^(?:left|right|up|down|e\d{1,2})$/;
export const PLACE = /^[a-z][a-zA-Z0-9]{0,31}(?:\.(?:left|right|up|down|e\d{1,2}))?$/;

/** What each spelling looks like, for who wrote another. */
export const SPELLINGS: ReadonlyMap<string, string> = new Map([
  [String(NAME), 'a name of letters and figures that starts with a small letter'],
  [String(FORM), 'a length such as width + 1/8 in'],
  [String(EDGE), 'an edge such as base.left'],
  [String(EDGE_NAME), 'an edge such as left or e2'],
  [String(PLACE), 'a panel or an edge, such as front or front.up'],
]);

export const name = z
  .string()
  .regex(NAME)
  .refine((text) => !TAKEN.has(text), { error: 'empty' });
export const free = id.refine((text) => !TAKEN.has(text), { error: 'empty' });
export const line = (most: number) =>
  z
    .string()
    .overwrite(cleanLine)
    .max(most)
    .refine((text) => isSeen(text), { error: 'empty' });
export const len = z.string().max(120).regex(FORM);
const angle = z.union([z.number().min(-180).max(180), name]);
const edgeOf = z.string().regex(EDGE) as unknown as z.ZodType<`${string}.left`>;
export const formula = z.string().min(1).max(300);

export const few = <Value extends z.ZodType>(key: z.ZodType<string, string>, value: Value, most: number) =>
  z.record(key, value).refine((values) => Object.keys(values).length <= most, { error: 'too-many' });
const chosen = few(name, free, MOST.named);
export const given = z.array(chosen).max(MOST.ways);
export const pair = <Value extends z.ZodType>(value: Value) => z.tuple([value, value]);

const roundHole = z.strictObject({ hole: z.literal('round'), across: len, at: pair(len).exactOptional() });
const hole = z.discriminatedUnion('hole', [
  z.strictObject({
    hole: z.literal('window'),
    margin: len,
    shape: z.enum(['rounded', 'arch', 'round', 'oval', 'heart']).exactOptional(),
    headDown: z.literal(true).exactOptional(),
  }),
  roundHole,
  z.strictObject({ hole: z.literal('slot'), size: pair(len), at: pair(len).exactOptional() }),
  z.strictObject({
    hole: z.literal('slit'),
    long: len,
    runs: z.enum(['across', 'up']),
    at: pair(len).exactOptional(),
  }),
]);

const cuts = z
  .array(
    z.strictObject({
      at: z.string().regex(EDGE_NAME) as unknown as z.ZodType<EdgeName>,
      cut: z.enum(['round', 'slant', 'arch', 'scoop']),
      size: len,
    }),
  )
  .max(MOST.corners)
  .exactOptional();

const hung = {
  role: z.enum(ROLES),
  on: edgeOf.exactOptional(),
  at: len.exactOptional(),
  fold: angle.exactOptional(),
  flush: z.literal(true).exactOptional(),
};
const notches = z
  .array(z.strictObject({ edge: z.enum(['left', 'right', 'up', 'down']), radius: len }))
  .max(4)
  .exactOptional();
const rectangle = z.strictObject({
  ...hung,
  size: pair(len),
  taper: z.union([len, pair(len)]).exactOptional(),
  bow: len.exactOptional(),
  follows: name.exactOptional(),
  holes: z.array(hole).max(MOST.list).exactOptional(),
  notches,
  cuts,
});
const outline = z.strictObject({
  ...hung,
  hinge: len.exactOptional(),
  outline: z.array(pair(len)).min(1).max(MOST.corners),
  asLies: z.literal(true).exactOptional(),
  holes: z.array(roundHole).max(MOST.list).exactOptional(),
  cuts,
});
const regular = z.strictObject({ ...hung, regular: z.int().min(3).max(MOST.sides), side: len });
const lens = z.strictObject({ ...hung, lens: len, notches });
const leaf = z.strictObject({ ...hung, leaf: len });
const sector = z.strictObject({ ...hung, sector: len, turn: angle, follows: name.exactOptional() });
/** One field tells each shape from the others, so that a fault is told of that shape alone. What has none of these is a rectangle. */
const SHAPES = { outline, regular, lens, leaf, sector };
const panel = z.unknown().transform((data, context) => {
  const has = (key: string) => typeof data === 'object' && data !== null && Object.hasOwn(data, key);
  const shape = Object.entries(SHAPES).find(([key]) => has(key))?.[1] ?? rectangle;
  const reading = shape.safeParse(data);
  if (reading.success) return reading.data;
  context.issues.push(...reading.error.issues.map((issue) => ({ ...issue, input: data }) as never));
  return z.NEVER;
});

const tip = line(300).exactOptional();
const step = z.discriminatedUnion('do', [
  z.strictObject({
    do: z.literal('fold'),
    panels: z.array(name).min(1).max(MOST.panels),
    to: angle.exactOptional(),
    through: z
      .array(few(name, angle, MOST.panels))
      .max(MOST.list)
      .exactOptional(),
    bends: z.boolean().exactOptional(),
    tip,
  }),
  z.strictObject({ do: z.literal('glue'), panel: name, onto: name, tip }),
  z.strictObject({
    do: z.literal('tuck'),
    panels: z.array(name).min(1).max(MOST.panels),
    bends: z.boolean().exactOptional(),
    tip,
  }),
]);

const joint = z.strictObject({
  panel: name,
  onto: name,
  lap: z.enum(['inside', 'outside']),
  carries: z.boolean().exactOptional(),
  glueOnly: z.boolean().exactOptional(),
  gap: len.exactOptional(),
  when: len.exactOptional(),
  unless: len.exactOptional(),
});

export const piece = z.strictObject({
  label: line(80),
  lid: z.literal(true).exactOptional(),
  panels: few(name, panel, MOST.panels),
  creases: z
    .array(z.strictObject({ between: pair(edgeOf), fold: angle }))
    .max(MOST.list)
    .exactOptional(),
  joints: z.array(joint).max(MOST.list),
  seams: z
    .array(z.union([pair(edgeOf), z.tuple([edgeOf, edgeOf, len])]))
    .max(MOST.list)
    .exactOptional(),
  closing: z.array(step).max(MOST.list),
  overlaps: z.array(z.array(name).max(MOST.panels)).max(MOST.list).exactOptional(),
  rings: z.array(z.array(name).max(MOST.sides)).max(MOST.list).exactOptional(),
  shell: z.array(name).max(MOST.panels),
  roomFormula: formula,
});
export const pieces = few(name, piece, MOST.pieces);

export type PieceData = z.infer<typeof piece>;
