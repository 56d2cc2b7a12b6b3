import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { TABLES } from '../../shared/tables';
import { SCHEMA } from '../../shared/workbook';
import { writeWorkbook } from '../../shared/write-workbook';
import { REFUSAL_CODES } from '../../src/core/rows/refusals';
import { planImport } from '../../src/state/intents/import-plan';
import { type Step, takeStep } from '../../src/state/keeping/steps';
import { rowAt, type Shelf, shelfOf } from '../../src/state/shelf';
import { FUZZ_SEED, FUZZ_TRIES } from '../fuzz';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';
import { anyWorkbook } from '../shared/any-workbook';

/** A small generator of our own, so that a run is the same everywhere. Source: Marsaglia, Xorshift RNGs, 2003 (13, 17, 5). */
function seeded(seed: number): (below: number) => number {
  let state = seed | 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}

/** Pieces that have broken readers before: numbers out of range, names of everything, brackets, half characters, other formats. */
const NASTIES = [
  '-0',
  '1e400',
  '-1',
  '1e-9',
  '0.1',
  '99999999999999999999',
  'NaN',
  'null',
  'true',
  '""',
  '"\\ud800"',
  '"\\u202e"',
  '"\\u0000"',
  '{}',
  '[]',
  '{"__proto__":{"polluted":1}}',
  '"__proto__":1,',
  '"constructor":1,',
  '"toString":',
  '[[[[[[[[[[',
  ']]]]',
  '{"a":',
  '\\',
  '"',
  ',',
  ':',
  '\uFEFF',
  '\u2028',
  '"schema":2',
  '"kind":"everything"',
  '"id":"r-1"',
  '<img src=x onerror=alert(1)>',
  '=1+1',
  '../../etc',
  '\xff',
  '0'.repeat(400),
  '['.repeat(100),
].map((text) => Buffer.from(text, 'latin1'));

type Mutation = (bytes: Buffer, roll: (below: number) => number, others: readonly Buffer[]) => Buffer;
const MUTATIONS: readonly Mutation[] = [
  (bytes, roll) => {
    const flipped = Buffer.from(bytes);
    for (let n = 1 + roll(4); n > 0; n--) {
      const at = roll(bytes.length);
      flipped[at] = (flipped[at] ?? 0) ^ (1 << roll(8));
    }
    return flipped;
  },
  (bytes, roll) => bytes.subarray(0, roll(bytes.length)),
  (bytes, roll) => {
    const from = roll(bytes.length);
    return Buffer.concat([bytes.subarray(0, from), bytes.subarray(from + roll(40))]);
  },
  (bytes, roll, others) => {
    const other = others[roll(others.length)] ?? bytes;
    return Buffer.concat([bytes.subarray(0, roll(bytes.length)), other.subarray(roll(other.length))]);
  },
  (bytes, roll) => {
    const at = roll(bytes.length);
    return Buffer.concat([
      bytes.subarray(0, at),
      NASTIES[roll(NASTIES.length)] ?? bytes,
      bytes.subarray(at + roll(8)),
    ]);
  },
];

/** A value for a value, mostly of its own kind: these get through the first gates, and some through all. */
const swapValue: Mutation = (bytes, roll) => {
  const values = [...bytes.toString('latin1').matchAll(/: ("[^"]*"|-?[\d.]+|null|\[\]|\{\})/g)];
  const pick = (from: typeof values) => from[roll(Math.max(1, from.length))];
  const value = pick(values);
  if (!value) return bytes;
  const [text = ''] = value.slice(1);
  const like = pick(
    values.filter(([, other]) => other?.at(0) === text.at(0) && other?.length === text.length),
  );
  const swap =
    roll(8) === 0
      ? NASTIES[roll(NASTIES.length)]
      : Buffer.from((roll(4) === 0 ? pick(values) : like)?.[1] ?? '', 'latin1');
  const from = value.index + 2;
  return Buffer.concat([bytes.subarray(0, from), swap ?? bytes, bytes.subarray(from + text.length)]);
};

/** What a file says, for comparing: hidden characters and minus zero aside, which the reader takes out by design. */
function whatItSays(value: unknown): unknown {
  if (typeof value === 'string')
    return value.replace(/[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu, '').replace(/\p{Surrogate}/gu, '\uFFFD');
  if (typeof value === 'number') return value + 0;
  if (Array.isArray(value)) return value.map(whatItSays);
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, whatItSays(inner)]));
  return value;
}

/** A name's tabs and line breaks become spaces by design, so blanks of any kind are left out of the comparison. */
const withoutBlanks = (value: unknown): unknown => JSON.parse(JSON.stringify(value).replace(/\\[nt]| /g, ''));

/** A shelf that shares ids with the files, so that imports clash. */
const HERE: Shelf = shelfOf(
  fc.sample(anyWorkbook, { seed: SEED, numRuns: 40 }).reduce((all, file) => ({
    ...file,
    recipes: [...all.recipes, ...file.recipes.slice(0, 1)],
    papers: [...all.papers, ...file.papers.slice(0, 1)],
  })),
);

/** Reads a file in, and checks everything that is promised of it. Gives what became of it. */
function tryFile(bytes: Buffer, read = readWorkbook): 'imported' | 'refused' {
  const untouched = Buffer.from(bytes);
  const began = performance.now();
  const reading = read(new Uint8Array(bytes));
  if (performance.now() - began > 1000) throw new Error('took more than a second');
  if (!reading.ok) {
    if (reading.refusals.length === 0 || reading.refusals.some(({ code }) => !REFUSAL_CODES.includes(code)))
      throw new Error('refused without a reason');
    if (!Buffer.from(reading.original as Uint8Array).equals(untouched))
      throw new Error('the original was not handed back');
    return 'refused';
  }
  const parsed = JSON.parse(bytes.toString('utf8').replace(/^\uFEFF/, ''));
  // What format 2 added may be missing from a file of format 1, and from nothing else; format 3 only adds what may be left out.
  const said = whatItSays({ ...(parsed.schema === 1 && { photos: [] }), ...parsed, schema: SCHEMA });
  expect(withoutBlanks(reading.file)).toEqual(withoutBlanks(said));

  let ids = 0;
  const plan = planImport(reading.file, HERE, () => `fresh-${++ids}`);
  const coming = plan.rows.filter(({ fate }) => fate !== 'same');
  const step: Step = {
    label: 'Import',
    at: 0,
    changes: coming.map(({ table, row }) => ({ table, id: row.id, do: 'add', row })),
  };
  const shelf = takeStep(HERE, step, 'redo', '');
  if (!shelf) throw new Error('what was read could not be put on the shelf');
  for (const table of TABLES) {
    for (const [id, row] of HERE[table])
      if (rowAt(shelf, { table, id }) !== row) throw new Error(`${table}/${id} was changed`);
    if (shelf[table].size !== HERE[table].size + coming.filter((row) => row.table === table).length)
      throw new Error('a row went missing');
  }
  return 'imported';
}

const whole = fc
  .sample(anyWorkbook, { seed: SEED, numRuns: 40 })
  .map((file) => Buffer.from(writeWorkbook(file)));
const REFUSED = 'tests/fixtures/refused/';
const refused = readdirSync(REFUSED).map((file) => readFileSync(REFUSED + file));
/** Files that an earlier run found, and that broke a promise then. */
const ONCE_BROKE = 'tests/fixtures/once-broke/';
const onceBroke = readdirSync(ONCE_BROKE).map((file) => ({ file, bytes: readFileSync(ONCE_BROKE + file) }));
const corpus = [...whole, ...refused, ...onceBroke.map(({ bytes }) => bytes)];

describe('files that were damaged, cut, mixed and forged', () => {
  test(`are each imported as they read or refused for a reason: ${FUZZ_TRIES} of them`, {
    timeout: 60_000 + FUZZ_TRIES * 20,
  }, ({ task }) => {
    const roll = seeded(FUZZ_SEED);
    const count = { imported: 0, refused: 0 };
    for (let number = 0; number < FUZZ_TRIES; number++) {
      let bytes: Buffer = corpus[roll(corpus.length)] ?? Buffer.of();
      for (let n = 1 + roll(3); n > 0 && bytes.length > 0; n--)
        bytes = (roll(2) === 0 ? swapValue : (MUTATIONS[roll(MUTATIONS.length)] ?? swapValue))(
          bytes,
          roll,
          corpus,
        );
      try {
        count[tryFile(bytes)]++;
      } catch (error) {
        throw new Error(`file ${number}, in base64: ${bytes.toString('base64')}`, { cause: error });
      }
    }
    const lost = FUZZ_TRIES - count.imported - count.refused;
    recordFault({ task }, { fault: 'a damaged or forged file', tries: FUZZ_TRIES, lost, goal: 0 });
    // Both ends of the reader were reached, or the files were too tame or too wild to tell anything.
    expect(count.imported).toBeGreaterThan(FUZZ_TRIES / 50);
    expect(count.refused).toBeGreaterThan(FUZZ_TRIES / 2);
  });

  test.each(onceBroke)('$file, which once broke a promise, keeps it now', ({ bytes }) => {
    expect(['imported', 'refused']).toContain(tryFile(bytes));
  });

  test('a careless reader would be found: one that changes a value, names no reason, throws, or loses the original', () => {
    const bytes = whole.find((file) => file.includes('caliperUm')) ?? Buffer.of();
    expect(tryFile(bytes)).toBe('imported');
    const careless: readonly (typeof readWorkbook)[] = [
      (original) => {
        const reading = readWorkbook(original);
        return reading.ok ? { ...reading, file: { ...reading.file, papers: [], recipes: [] } } : reading;
      },
      (original) => ({ ok: false, refusals: [], original }),
      () => {
        throw new Error('as planned');
      },
      () => ({
        ok: false,
        refusals: [{ code: 'not-json', path: '', found: '', expected: '' }],
        original: new Uint8Array(),
      }),
    ];
    for (const read of careless) expect(() => tryFile(bytes, read)).toThrow();
  });
});
