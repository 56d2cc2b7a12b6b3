import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { STYLES } from '../../src/core/styles';
import { tray } from '../../src/core/styles/boxes/tray';
import { faultsByHand, type HandWorked, missingFixture, readFixture } from './fixture';
import { withStyles } from './readme-styles';

describe.each(STYLES.map((style) => [style.name, style] as const))('%s, worked by hand', (_, style) => {
  it('has two sizes worked by hand', () => expect(missingFixture(style)).toEqual([]));

  it.each(readFixture(style.id).cases.map((worked) => [worked.title, worked] as const))(
    '%s',
    (_title, worked) => expect(faultsByHand(style, worked)).toEqual([]),
  );
});

describe('what is worked wrong is told in words', () => {
  const [worked] = readFixture('tray').cases as [HandWorked];
  const hand = worked.pieces['tray'] ?? { blank: [0, 0], scores: [], slits: [], room: 0 };
  const told = (other: Partial<typeof hand>) =>
    faultsByHand(tray, { ...worked, pieces: { tray: { ...hand, ...other } } });

  it.each([
    [{ blank: [6, 5.5] as const }, ['tray: blank 6, 5.5 by hand, 6, 5 in the net']],
    [{ room: 11 }, ['tray: room 180257.7 mm3 by hand, 196644.8 in the net']],
    [
      { slits: hand.slits.slice(1) },
      ['tray: slit 0.0625, 1, 1, 1 of the net is not worked by hand', 'tray: 3 slits by hand, 4 in the net'],
    ],
    [
      { scores: [[1, 0, 1, 4] as const, ...hand.scores.slice(1)] },
      [
        'tray: score 1, 0, 1, 4 by hand is not in the net',
        'tray: score 1, 0, 1, 5 of the net is not worked by hand',
      ],
    ],
  ])('%j', (other, words) => expect(told(other)).toEqual(words));

  it('a style without a fixture is told what it must hold', () => {
    const words = missingFixture({ ...tray, id: 'no-such' });
    expect(words.join('\n')).toMatch(/no-such\.json is missing[\s\S]*width, depth, height[\s\S]*tray, each/);
    expect(words.length).toBeLessThanOrEqual(15);
  });
});

describe('the table of styles in the README', () => {
  const readme = readFileSync('README.md', 'utf8');

  it('is what the styles say (npm run style -- readme writes it)', () =>
    expect(readme).toBe(withStyles(readme)));

  it('a row that is missing is seen', () => {
    const without = readme.replace(/^\| Tray \|.*\n/m, '');
    expect(without).not.toBe(readme);
    expect(withStyles(without)).not.toBe(without);
  });
});
