import { expect, test } from 'vitest';
import { sayAloud } from '../../src/ui/words/english/bench';

test.each([
  ['Score at 1, 2 1/2 and 7 1/2 in.', 'Score at 1, 2 and a half and 7 and a half inches.'],
  ['Cut it to 11 × 4 1/2 in.', 'Cut it to 11 × 4 and a half inches.'],
  ['Snip 1/8 in off each corner.', 'Snip an eighth of an inch off each corner.'],
  ['Tape: 1 strip, 2 15/16 in.', 'Tape: 1 strip, 2 and 15 sixteenths inches.'],
  ['Slit the lower 1 in.', 'Slit the lower 1 inch.'],
  ['It is 4½ in up, 2¹⁵⁄₁₆ in deep.', 'It is 4 and a half inches up, 2 and 15 sixteenths inches deep.'],
  ['Score at 88.9 mm.', 'Score at 88.9 millimeters.'],
  // Words that only look like a unit stay as they are.
  ['Fold the flaps in. Tuck it in.', 'Fold the flaps in. Tuck it in.'],
])('“%s” is heard as “%s”', (printed, heard) => {
  expect(sayAloud(printed)).toBe(heard);
});
