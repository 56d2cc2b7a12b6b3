import fc from 'fast-check';
import { FORMAT, SCHEMA, type WorkbookFile } from '../../shared/workbook';

const TICKS_PER_MM = 320;
const length = fc
  .integer({ min: 0.1 * TICKS_PER_MM, max: 2000 * TICKS_PER_MM })
  .map((ticks) => ticks / TICKS_PER_MM);
const margin = fc.integer({ min: 0, max: 20 * TICKS_PER_MM }).map((ticks) => ticks / TICKS_PER_MM);
const id = fc.stringMatching(/^[a-z0-9-]{1,12}$/);
const symbol = fc.stringMatching(/^[a-zA-Z][a-zA-Z0-9]{0,8}$/);
const note = fc
  .string({ unit: 'grapheme', maxLength: 60 })
  .map((text) => text.replace(/[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu, ''));
const name = note.map((text) => text || 'Untitled');
const moment = fc
  .date({ min: new Date('1999-01-01'), max: new Date('2199-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());
const row = { id, rev: fc.nat(), createdAt: moment, changedAt: moment };
const maybeId = fc.option(id);
const count = fc.integer({ min: 0, max: 100_000 });
const cents = fc.integer({ min: 0, max: 100_000_000 });
const caliperUm = fc.integer({ min: 50, max: 2000 });
const named = <Value>(value: fc.Arbitrary<Value>) =>
  fc.dictionary(symbol, value, { maxKeys: 5, noNullPrototype: true });

const piece = fc.record({
  id,
  kind: fc.constantFrom('liner', 'layer', 'band', 'tag'),
  name: note,
  widthMm: length,
  heightMm: length,
  perBox: fc.integer({ min: 1, max: 100 }),
  grain: fc.constantFrom('along-width', 'along-height', 'free'),
  paperId: maybeId,
});

const recipe = fc.record({
  ...row,
  name,
  styleId: id,
  sizesMm: named(length),
  options: named(id),
  caliperUm,
  paperId: maybeId,
  faceUp: fc.constantFrom('inside', 'outside'),
  grain: fc.constantFrom('upright', 'around', 'free'),
  dressings: fc.array(fc.record({ id, name: note, pieces: fc.array(piece, { maxLength: 3 }) }), {
    maxLength: 2,
  }),
  notes: note,
});

const paper = fc.record({
  ...row,
  name,
  colour: fc.stringMatching(/^#[0-9a-f]{6}$/),
  acrossMm: length,
  upMm: length,
  grain: fc.constantFrom('across', 'up', 'none'),
  gsm: fc.integer({ min: 30, max: 1000 }),
  caliperUm,
  squaringMm: fc.record({ left: margin, right: margin, near: margin, far: margin }),
  packs: fc.array(fc.record({ sheets: fc.integer({ min: 1, max: 10_000 }), priceMinor: cents }), {
    maxLength: 3,
  }),
  onHandSheets: count,
});

const supply = fc.record({
  ...row,
  name,
  kind: fc.constantFrom('tape', 'ribbon'),
  widthMm: length,
  rollMm: fc.integer({ min: 1, max: 1_000_000 }),
  priceMinor: cents,
  onHandRolls: count,
});

const tool = fc.record({
  ...row,
  name,
  kind: fc.constantFrom('fence', 'grooves'),
  unit: fc.constantFrom('in', 'mm'),
  finestMarkMm: length,
  reachMm: length,
  longestCutMm: length,
  stack: fc.integer({ min: 1, max: 50 }),
});

const event = fc.record({
  ...row,
  name,
  date: fc.option(moment.map((text) => text.slice(0, 10))),
  lines: fc.array(
    fc.record({
      id,
      recipeId: id,
      dressingId: maybeId,
      paperId: maybeId,
      count: fc.integer({ min: 1, max: 100_000 }),
    }),
    { maxLength: 4 },
  ),
  spares: fc.record({ percent: fc.integer({ min: 0, max: 100 }), atLeast: count }),
  tapeId: maybeId,
  currency: fc.stringMatching(/^[A-Z]{3}$/),
  notes: note,
});

const rows = <Row extends { id: string }>(one: fc.Arbitrary<Row>) =>
  fc.uniqueArray(one, { maxLength: 2, selector: ({ id }) => id });

/** Any workbook the format allows: rows of every kind, every field over its whole range, names in every script. */
export const anyWorkbook = fc.record({
  format: fc.constant(FORMAT),
  schema: fc.constant(SCHEMA),
  kind: fc.constantFrom('recipe', 'event', 'everything'),
  recipes: rows(recipe),
  events: rows(event),
  papers: rows(paper),
  supplies: rows(supply),
  tools: rows(tool),
}) as fc.Arbitrary<WorkbookFile>;

export const anyRecipe = recipe as fc.Arbitrary<WorkbookFile['recipes'][number]>;
