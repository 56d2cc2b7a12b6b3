import { describe, expect, test } from 'vitest';
import { whyLine } from '../../../../src/core/bench/words/line-why';
import { tableOfLines } from '../../../../src/core/draw/net/net-table';
import { lengthWords } from '../../../../src/core/draw/strokes/length-text';
import { layNet } from '../../../../src/core/net';
import { openTop } from '../../../../src/core/styles/boxes/open-top';
import type { BoxStyle } from '../../../../src/core/styles/language/types';
import { STYLES } from '../../../../src/core/styles/registry';
import { type Ruler, USUAL_FINEST } from '../../../../src/core/units';
import { type Reason, sayReason } from '../../../../src/core/units/reason';

const ruler: Ruler = { unit: 'in', finest: USUAL_FINEST.in };
const say = (why: readonly Reason[]) =>
  why.map((each) => sayReason(each, { length: (length) => lengthWords(length, ruler), money: String }));

function linesOf(style: BoxStyle, faceUp: 'inside' | 'outside' = 'inside') {
  const net = layNet(style, { sizes: {}, caliperUm: 300 });
  return net.pieces.flatMap((piece) =>
    tableOfLines(piece, faceUp).map((row) => ({ row, why: whyLine(row, { net, piece, style, faceUp }) })),
  );
}

/** Front 3 1/2, left 1 1/2, back 3 1/2, right 1 1/2, tab 1: 3 1/2 + 1 1/2 + 3 1/2 = 8 1/2 in to the third score. */
test('the place of a score is the panels before it, each from the sizes given', () => {
  const third = linesOf(openTop).filter(({ row }) => row.ink === 'score-valley' && row.way === 'upright')[2]!;
  expect(say(third.why)).toEqual([
    'Between the back wall and the right wall.',
    'From the left: the front wall 3½ in + the left wall 1½ in + the back wall 3½ in = 8½ in.',
    'The front wall: width 3½ in.',
    'The left wall: depth 1½ in.',
    'The back wall: width 3½ in.',
  ]);
});

/** The other face up, the strip still ends with its tab: 3 1/2 + 1 1/2 in to the score between left and back. */
test('with the outside up it is measured from the same end', () => {
  const second = linesOf(openTop, 'outside').filter(
    ({ row }) => row.ink.startsWith('score') && row.way === 'upright',
  )[1]!;
  expect(say(second.why).slice(0, 2)).toEqual([
    'Between the left wall and the back wall.',
    'From the left: the front wall 3½ in + the left wall 1½ in = 5 in.',
  ]);
});

/** Every length in a sentence that adds up, added up, is the length it ends in. */
const addsUp = ({ facts }: Reason, at: number): boolean => {
  const sum = facts['sum'] as Reason;
  const lengths = Object.values(sum.facts).map((part) => {
    const long = (part as Reason).facts['long'];
    return typeof long === 'object' && 'length' in long ? long.length : Number.NaN;
  });
  return lengths.reduce((sum, length) => sum + length, 0) === at;
};

describe('every line of every style', () => {
  test.each(STYLES.map((style) => [style.id, style] as const))('adds up to its place: %s', (_, style) => {
    for (const faceUp of ['inside', 'outside'] as const)
      for (const { row, why } of linesOf(style, faceUp)) {
        expect(why.length).toBeGreaterThan(0);
        expect(say(why).join(' ')).not.toMatch(/[{}]|NaN|undefined/);
        const at = row.way === 'level' ? row.fromTop[0] : row.fromLeft[0];
        for (const each of why)
          if (/^From the .*\{sum\}/.test(each.says)) expect(addsUp(each, at)).toBe(true);
      }
  });

  test('and nine in ten upright and level ones are added up from panels', () => {
    const measured = STYLES.flatMap((style) => linesOf(style)).filter(
      ({ row }) => row.ink !== 'edge' && (row.way === 'upright' || row.way === 'level'),
    );
    const added = measured.filter(({ why }) => why.some(({ says }) => /^(From|On) the /.test(says)));
    expect(added.length / measured.length).toBeGreaterThan(0.9);
  });

  test('a sum that is one off is seen', () => {
    const [line] = linesOf(openTop).filter(({ row }) => row.way === 'upright' && row.ink === 'slit');
    const sum = line!.why.find(({ says }) => says.includes('{sum}'))!;
    expect(addsUp(sum, line!.row.fromLeft[0])).toBe(true);
    expect(addsUp(sum, line!.row.fromLeft[0] + 1)).toBe(false);
  });
});
