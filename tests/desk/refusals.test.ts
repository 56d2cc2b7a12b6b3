import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SEED } from '../seed';
import { callDesk } from './call-desk';

const box = ['net', '--style', 'open-top'];

describe('what the desk turns away', () => {
  test.each([
    [['nte'], 'unknown-verb', 'Did you mean net?'],
    [['constructor'], 'unknown-verb', 'There are:'],
    [['styles', 'tray', 'all'], 'extra-word', '“all” is one word too many'],
    [['styles', '--format', 'json'], 'unknown-option', 'There are: --out'],
    [['styles', 'all'], 'unknown-style', 'There is no style “all”'],
    [['net'], 'no-style', 'Say which box'],
    [['net', '--style'], 'no-value', '--style needs a value'],
    [['net', '--style', '--set', 'width=3in'], 'no-value', '--style needs a value'],
    [['net', '--style', 'opentop'], 'unknown-style', 'Did you mean open-top?'],
    [['net', '--style', 'toString'], 'unknown-style', 'There is no style'],
    [[...box, '--style', 'open-top'], 'given-twice', '--style is given twice'],
    [[...box, '--sett', 'width=3in'], 'unknown-option', 'Did you mean --set?'],
    [[...box, '--set', 'widht=3in'], 'unknown-symbol', 'Did you mean width?'],
    [[...box, '--set', '__proto__=3in'], 'unknown-symbol', 'has no size “__proto__”'],
    [[...box, '--set', 'width'], 'not-a-setting', "such as width='3 1/2 in'"],
    [[...box, '--set', 'width=abc'], 'not-a-length', 'width: “abc” is not a length.'],
    [[...box, '--set', 'width='], 'empty', 'This is empty.'],
    [[...box, '--set', 'width=1,234'], 'separators', 'could mean thousands'],
    [[...box, '--set', 'width=3 feet'], 'feet', 'We can’t read feet'],
    [[...box, '--set', 'width=3 furlongs'], 'unknown-unit', 'unit'],
    [[...box, '--set', 'width=-3in'], 'negative', 'minus'],
    [[...box, '--set', `width=${'9'.repeat(5000)}`], 'not-a-length', 'not a length'],
    [[...box, '--set', 'width=1e9mm'], 'not-a-length', 'not a length'],
    [[...box, '--set', 'width=0'], 'too-small', 'this style takes'],
    [[...box, '--set', 'width=1500mm'], 'too-big', 'this style takes'],
    [[...box, '--caliper', 'thin'], 'not-a-length', '--caliper: “thin” is not a thickness'],
    [[...box, '--caliper', '5in'], 'caliper-out-of-range', 'Check the unit'],
    [[...box, '--unit', 'inch'], 'unknown-unit', '--unit is in or mm'],
    [[...box, '--option', 'seam=side'], 'unknown-option', 'no option “seam”'],
    [[...box, '--format', 'png'], 'unknown-format', 'There is no format “png”'],
    [['net', 'missing.json'], 'enoent', 'missing.json: there is no such file'],
  ])('%j is refused as %s', async (words, code, sentence) => {
    const { refused, codes, printed } = await callDesk(words);
    expect(codes).toContain(code);
    expect(refused.map(({ says }) => says).join(' ')).toContain(sentence);
    expect(printed).toBe('');
  });

  test('everything wrong is said at once, not the first fault only', async () => {
    const { codes } = await callDesk([
      ...box,
      '--set',
      'width=abc',
      '--set',
      'hieght=3in',
      '--caliper',
      'thin',
    ]);
    expect(codes).toEqual(['not-a-length', 'unknown-symbol', 'not-a-length']);
  });

  test.each([
    ['not JSON at all', 'not-json'],
    ['[]', 'not-a-workbook'],
    ['{"format":"crease-and-count","schema":99}', 'newer-schema'],
    ['['.repeat(5000), 'too-deep'],
    [
      '{"format":"crease-and-count","schema":1,"kind":"recipe","recipes":[],"events":[],"papers":[],"supplies":[],"tools":[]}',
      'no-recipe',
    ],
  ])('a recipe file that holds %.40s is refused as %s', async (text, code) => {
    const { codes, printed } = await callDesk(['net', 'recipe.json'], { 'recipe.json': text });
    expect(codes).toEqual([code]);
    expect(printed).toBe('');
  });

  test('whatever words are given, the desk answers or gives a reason', async () => {
    const word = fc.oneof(
      fc.constantFrom(
        'net',
        'styles',
        '--style',
        'open-top',
        '--set',
        'width=3in',
        '--caliper',
        '--',
        '--=',
        '=',
        '--out',
        '--format',
      ),
      fc.string({ maxLength: 20 }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(word, { maxLength: 8 }), async (words) => {
        const { refused, printed, written } = await callDesk(words);
        expect(refused.length > 0 || printed !== '' || written.size > 0).toBe(true);
        for (const { says, code } of refused) expect([says.length > 10, code !== '']).toEqual([true, true]);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});
