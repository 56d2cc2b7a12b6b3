import { expect, test } from 'vitest';
import { readGrams } from '../../../src/core/units';

// An ounce is 28.349523125 g and a pound 453.59237 g, by the definition of the avoirdupois pound (1959).
test.each([
  ['57', 57],
  ['57 g', 57],
  ['2 oz', 57],
  ['1/2 oz', 14],
  ['1.5oz.', 43],
  ['0.5 lb', 227],
  ['2 pounds', 907],
  ['', 0],
])('%s', (text, grams) => {
  expect(readGrams(text)).toBe(grams);
});

test.each(['two', '2 kg', '1/0 oz', '-3', '2 oz 3'])('%s does not read', (text) => {
  expect(readGrams(text)).toBeNull();
});
