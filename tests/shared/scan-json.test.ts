import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nestsDeeperThan, repeatedKey } from '../../src/core/rows/scan-json';
import { SEED } from '../seed';

/** Depth counted the other way round: on what the parser made of the text. */
const depthOf = (value: unknown): number =>
  typeof value === 'object' && value !== null ? 1 + Math.max(0, ...Object.values(value).map(depthOf)) : 0;

describe('nesting, counted on the text', () => {
  test('is what the parser finds, whatever stands in strings', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.boolean(), (value, spaced) => {
        const text = JSON.stringify(value, null, spaced ? 1 : 0);
        const depth = depthOf(value);
        expect(nestsDeeperThan(depth, text)).toBe(false);
        if (depth > 0) expect(nestsDeeperThan(depth - 1, text)).toBe(true);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test('is not fooled by brackets in a string, or by a quote behind a backslash', () => {
    expect(nestsDeeperThan(1, String.raw`["[[[[\"[[[", "\\"]`)).toBe(false);
    expect(nestsDeeperThan(1, String.raw`["\\", []]`)).toBe(true);
  });

  test('of a million levels is found without climbing them', () => {
    expect(nestsDeeperThan(64, '['.repeat(1_000_000))).toBe(true);
  });
});

describe('a key given twice', () => {
  test.each([
    ['{"a":1,"a":2}', 'a'],
    ['{"a":{"b":1,"b":1}}', 'b'],
    ['[{"a":1},{"a":1,"c":[{}],"a":2}]', 'a'],
    [String.raw`{"ab":1,"\u0061b":2}`, 'ab'],
    ['{"__proto__":{}}', '__proto__'],
    [String.raw`{"a":{"__pro\u0074o__":1}}`, '__proto__'],
  ])('is found in %s', (text, key) => expect(repeatedKey(text)).toBe(key));

  test.each([
    '{"a":{"a":{"a":1}},"b":["a","a"]}',
    '[{"a":1},{"a":1}]',
    '{"a":"b","b":"a,\\"a\\":1"}',
    '"__proto__"',
  ])('is not seen in %s', (text) => expect(repeatedKey(text)).toBeNull());

  test('is never seen in what a writer wrote', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
        expect(repeatedKey(JSON.stringify(value).replaceAll('"__proto__":', '"proto":'))).toBeNull();
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
});
