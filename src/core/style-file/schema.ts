import '../rows/jitless';
import { z } from 'zod';
import type { ConstraintSpec } from '../styles/language/types';
import { few, formula, free, given, len, line, MOST, name, PLACE, pair, piece, pieces } from './piece-schema';

/**
 * A box style as a file: its declaration as data, with formulas as text. `schema` grows with what earlier readers can't read: 2 added workings,
 * numbers of options and integrals; 3 added cuts at edges and corners, slits, leaves and their rings, and sectors. A file gets the lowest number
 * that covers what is in it.
 */
export const STYLE_FORMAT = 'crease-and-count-style';
export const STYLE_SCHEMA = 3;

const symbol = z.strictObject({
  role: z.enum(['size', 'allowance']),
  label: line(80),
  help: line(300),
  default: len,
  forNew: len.exactOptional(),
  min: len,
  max: len,
  given: given.exactOptional(),
});
const quantity = z.strictObject({
  means: line(300),
  formula,
  onMark: z.literal(true).exactOptional(),
});

const constraint = z.strictObject({
  code: free,
  symbol: name,
  atLeast: len.exactOptional(),
  atMost: len.exactOptional(),
  severity: z.enum(['stop', 'warn', 'note'] as const satisfies readonly ConstraintSpec['severity'][]),
  given: given.exactOptional(),
  facts: few(name, len, MOST.named).exactOptional(),
  says: line(400),
  remedy: line(400),
});

const promise = z.discriminatedUnion('claim', [
  z.strictObject({
    claim: z.literal('covers'),
    piece: name,
    panels: z.array(name).max(MOST.panels),
    area: pair(len),
  }),
  z.strictObject({
    claim: z.literal('nests'),
    inner: name,
    outer: name,
    gap: pair(len),
    slides: z.literal(true).exactOptional(),
  }),
]);

const fit = z.strictObject({
  what: line(200),
  room: len,
  body: len,
  card: len,
  ease: len,
  marks: z.int().min(0).max(20),
  truest: line(300),
  saves: line(300),
  saidBy: free.exactOptional(),
  given: given.exactOptional(),
});

const option = z.strictObject({
  label: line(80),
  help: line(300),
  choices: z
    .array(z.strictObject({ id: free, label: line(80) }))
    .min(1)
    .max(12),
  forNew: free.exactOptional(),
  addOn: z.literal(true).exactOptional(),
  given: given.exactOptional(),
});

const place = z.strictObject({
  id: free,
  label: line(80),
  piece: name,
  forNew: z.literal(true).exactOptional(),
  at: z.array(z.string().regex(PLACE)).min(1).max(8),
  headDown: z.literal(true).exactOptional(),
});
const places = z.array(place).max(12).exactOptional();
const side = z.enum(['width', 'depth', 'height']);

const style = z.strictObject({
  id: free.refine((text) => /^[a-z]/.test(text), { error: 'empty' }),
  name: line(80),
  source: line(300),
  goodFor: line(300),
  watchOut: line(300),
  symbols: few(name, symbol, MOST.named),
  inside: z.tuple([len, len, len]),
  slidesInBy: pair(side).exactOptional(),
  pocket: z.literal(true).exactOptional(),
  roof: z.literal('open').exactOptional(),
  allowances: few(name, len, MOST.named).exactOptional(),
  lets: few(name, len, MOST.named).exactOptional(),
  workings: few(name, formula, MOST.named).exactOptional(),
  quantities: few(name, quantity, MOST.named).exactOptional(),
  angles: few(name, quantity, MOST.named).exactOptional(),
  options: few(name, option, 8).exactOptional(),
  addOns: z
    .strictObject({
      window: places,
      hangTab: places,
      notch: places,
      slot: places,
      ribbon: places,
      corners: places,
      pull: places,
      dustFlaps: z.literal(true).exactOptional(),
    })
    .exactOptional(),
  /** One way of building it; or `ways`, one for each way of choosing its options. */
  pieces: pieces.exactOptional(),
  ways: z
    .array(z.strictObject({ given: given.min(1), pieces }))
    .min(1)
    .max(MOST.ways)
    .exactOptional(),
  whole: piece.exactOptional(),
  constraints: z.array(constraint).max(MOST.list),
  promises: z.array(promise).max(MOST.list),
  fits: z.array(fit).max(MOST.list).exactOptional(),
  traits: z.array(z.enum(['lid', 'tall', 'flat-packet'])).max(3),
});

/** The lowest schema that covers a style. */
export function schemaFor(said: object): 1 | 2 | typeof STYLE_SCHEMA {
  const text = JSON.stringify(said);
  if (/"(?:cuts|rings)":\[|"(?:leaf|sector)":"|"hole":"slit"/.test(text)) return STYLE_SCHEMA;
  return Object.hasOwn(said, 'workings') || /(?:number|integral)\(/.test(text) ? 2 : 1;
}

export const styleFile = z.strictObject({
  format: z.literal(STYLE_FORMAT),
  schema: z.union([z.literal(1), z.literal(2), z.literal(STYLE_SCHEMA)]),
  style,
});

export type StyleFile = z.infer<typeof styleFile>;
export type StyleData = StyleFile['style'];
