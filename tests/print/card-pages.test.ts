import { afterAll, describe, expect, test } from 'vitest';
import { boxCards } from '../../src/core/bench';
import { STYLES } from '../../src/core/styles';
import { trimmer } from '../core/bench/bench-tools';
import { benchCardOf, boxOf } from './printed-boxes';

/**
 * Words and pages (letter, A4) of the card as it was before the compact edition, counted in the same way on the same boxes. A number is a
 * word, fraction and all; a tip is counted wherever it stands.
 */
const BEFORE: Readonly<Record<string, readonly [words: number, letter: number, a4: number]>> = {
  'open-top': [404, 4, 4],
  'two-part-box': [514, 9, 9],
  'lid-flap': [574, 6, 5],
  'snap-lock': [680, 5, 5],
  'crash-lock': [790, 6, 5],
  'straight-tuck': [504, 5, 4],
  'reverse-tuck': [504, 5, 4],
  'gable-top': [929, 7, 6],
  'fin-top': [1123, 7, 6],
  tray: [429, 5, 4],
  'tray-lid': [858, 10, 8],
  'double-wall': [771, 6, 6],
  'sleeve-drawer': [584, 8, 7],
  'prism-lid': [1655, 11, 11],
  'star-box': [968, 8, 7],
  'pillow-pack': [429, 4, 4],
  'square-pyramid': [558, 5, 5],
  cornet: [972, 5, 5],
  'flared-bowl': [513, 4, 4],
  wedge: [656, 5, 5],
  'envelope-box': [366, 5, 5],
  wallet: [425, 5, 4],
};

/** `3 1/2` is one word, `×` none. */
const countWords = (text: string): number =>
  text
    .replace(/(\d+) (\d+\/\d+)/g, '$1-$2')
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

interface Row {
  readonly style: string;
  readonly words: number;
  readonly letter: number;
  readonly a4: number;
}

const rows: Row[] = STYLES.map((style) => {
  const steps = boxCards(boxOf(style), trimmer).flatMap((card) => card.steps);
  const tips = new Set(steps.flatMap((step) => step.tips));
  const text = [...steps.flatMap(({ headline, details }) => [headline, ...details]), ...tips].join(' ');
  const pages = (paper: 'letter' | 'a4') => benchCardOf(style, paper).pages.length;
  return { style: style.id, words: countWords(text), letter: pages('letter'), a4: pages('a4') };
});

afterAll(() => {
  const lines = rows.map(({ style, words, letter, a4 }) => {
    const [had, hadLetter, hadA4] = BEFORE[style] ?? [];
    const from = (before: number | undefined) => (before === undefined ? '' : `${before} to `);
    return `${style.padEnd(16)} words ${from(had)}${words}, letter ${from(hadLetter)}${letter}, A4 ${from(hadA4)}${a4}`;
  });
  console.info(['Step cards, words and pages before and now', ...lines].join('\n'));
});

describe('the step card in its compact edition', () => {
  test('stands on one page for at least sixteen styles', () => {
    for (const paper of ['letter', 'a4'] as const)
      expect(rows.filter((row) => row[paper] === 1).length, paper).toBeGreaterThanOrEqual(16);
  });

  test('stands on two pages for every style', () => {
    expect(rows.filter(({ letter, a4 }) => Math.max(letter, a4) > 2)).toEqual([]);
  });

  test('takes at most two fifths of the words it took, in the median', () => {
    const shares = rows
      .flatMap(({ style, words }) => (BEFORE[style] ? [words / BEFORE[style][0]] : []))
      .sort((a, b) => a - b);
    expect(shares[Math.floor(shares.length / 2)]).toBeLessThanOrEqual(0.4);
  });

  test('prints nothing smaller than 9 points', () => {
    const least = 9 * (25.4 / 72);
    for (const style of STYLES)
      for (const page of benchCardOf(style, 'letter').pages)
        for (const mark of page.marks)
          if (mark.kind === 'text') expect(mark.sizeMm, style.id).toBeGreaterThanOrEqual(least);
  });
});
