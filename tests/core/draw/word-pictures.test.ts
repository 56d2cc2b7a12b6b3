import { expect, test } from 'vitest';
import { pointOfArc } from '../../../src/core/draw/strokes/marks';
import type { Ink, Mark } from '../../../src/core/draw/strokes/types';
import { PICTURED_WORDS, pictureOfWord, WORD_PICTURE_MM } from '../../../src/core/draw/strokes/word-pictures';
import type { At } from '../../../src/core/plane';

const pointsOf = (mark: Mark): readonly At[] => {
  if (mark.kind === 'line') return mark.points;
  if (mark.kind === 'area') return mark.ring;
  if (mark.kind === 'text') return [mark.at];
  return [0, 0.5, 1].map((share) =>
    pointOfArc(mark.centre, mark.radius, mark.fromDeg + share * mark.sweepDeg),
  );
};
const inksOf = (marks: readonly Mark[]): Ink[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [] : mark.ink));
const isOutside = ([x, y]: At) => x < 0 || y < 0 || x > WORD_PICTURE_MM.width || y > WORD_PICTURE_MM.height;

test.each(PICTURED_WORDS)('the picture of %s lies within its frame', (word) => {
  const marks = pictureOfWord(word);
  expect(marks.length).toBeGreaterThan(1);
  expect(marks.flatMap(pointsOf).filter(isOutside)).toEqual([]);
});

test('a mark outside the frame is seen', () => {
  expect(isOutside([WORD_PICTURE_MM.width + 1, 3])).toBe(true);
});

/** The inks are those of the legend of every drawing, ISO 128 and Yoshizawa-Randlett by `inks.ts`. */
test.each<[Parameters<typeof pictureOfWord>[0], readonly Ink[]]>([
  ['score', ['score-valley', 'score-mountain']],
  ['slit', ['slit']],
  ['glue-tab', ['glue', 'score-valley']],
  ['lap', ['glue-below']],
  ['grain', ['grain']],
  ['offcut', ['offcut', 'part']],
  ['squaring', ['waste', 'cut']],
  ['net', ['score-valley', 'slit', 'edge']],
  ['score-to-score', ['dimension', 'score-valley']],
])('%s is drawn in %j', (word, inks) => {
  expect(inksOf(pictureOfWord(word))).toEqual(expect.arrayContaining([...inks]));
});

test('no two words have the same picture', () => {
  const drawn = PICTURED_WORDS.map((word) => JSON.stringify(pictureOfWord(word)));
  expect(new Set(drawn).size).toBe(PICTURED_WORDS.length);
});
