import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  evaluateForm,
  evaluateUp,
  expandForm,
  formOf,
  printForm,
  readForm,
} from '../../../src/core/styles/language/linear-form';
import { inches, ticks } from '../../../src/core/units/ticks';
import { SEED } from '../../seed';

const values = {
  width: inches(3, 1, 2),
  depth: inches(1, 1, 2),
  height: inches(3),
  tab: inches(1),
  t: ticks(98),
};

describe('a length written as a sum of names', () => {
  it.each([
    ['2 width + 2 depth + tab', inches(11)], // 7 + 3 + 1
    ['depth/2', inches(0, 3, 4)],
    ['1/3 height', inches(1)],
    ['width + 2t - 1/8 in', ticks(28448 + 196 - 1016)],
    ['-t + 1 1/2 in', ticks(12192 - 98)],
    ['3 mm', ticks(960)],
    ['2.5 mm', ticks(800)],
    ['1 1/2 tab', inches(1, 1, 2)],
    ['7/2 t', ticks(343)],
    ['3 t/4', ticks(74)], // 73.5, rounded once
    ['width - width', ticks(0)],
    ['0', ticks(0)],
    ['tab - 2 tab', ticks(-8128)],
  ])('%s', (text, expected) => expect(evaluateForm(readForm(text), values)).toBe(expected));

  it.each([
    '',
    'width depth',
    '3',
    'width ++ tab',
    '2 * width',
    'width/0',
    'in',
    '1/8',
    'w_x',
    '(width + tab)/2',
  ])('refuses “%s”', (text) => expect(() => readForm(text)).toThrow(RangeError));

  it('refuses a name without a value', () =>
    expect(() => evaluateForm(readForm('ease'), values)).toThrow(/ease/));

  it('is rounded once: thirds of an inch add up to the inch', () => {
    expect(evaluateForm(formOf('1/3 tab + 1/3 tab + 1/3 tab'), values)).toBe(inches(1));
  });

  it('meets the maker’s marks from below: 2 × .012 + 1/32 in is .055, so 1/16', () => {
    const form = readForm('2t + 1/32 in');
    expect(evaluateUp(form, values, inches(0, 1, 16))).toBe(inches(0, 1, 16));
    expect(evaluateUp(readForm('1/16 in'), values, inches(0, 1, 16))).toBe(inches(0, 1, 16));
  });

  it('says where a number comes from', () => {
    const show = (name: string) => ({ width: '3 1/2 in', tab: '1 in', depth: '1 1/2 in' })[name] ?? name;
    const print = (text: string) => printForm(readForm(text), show, (length) => `${length} ticks`);
    expect(print('2 width + tab')).toBe('2 × 3 1/2 in + 1 in');
    expect(print('depth/2 - 1/8 in')).toBe('1 1/2 in ÷ 2 − 1016 ticks');
    expect(print('-3/2 depth + width')).toBe('−3 × 1 1/2 in ÷ 2 + 3 1/2 in');
    expect(print('0')).toBe('0 ticks');
  });

  it('opens up named sums until only sizes are left, to the same value', () => {
    const lets = { around: '2 width + 2 depth', blank: 'around + tab', half: 'blank/2' };
    const open = expandForm(formOf('half + t'), lets);
    expect(open.terms.map(({ name }) => name).sort()).toEqual(['depth', 't', 'tab', 'width']);
    expect(evaluateForm(open, values)).toBe(inches(5, 1, 2) + 98);
  });

  it('reads what it is told to, whatever the numbers', () => {
    const count = fc.integer({ min: 0, max: 99 });
    fc.assert(
      fc.property(count, fc.integer({ min: 1, max: 64 }), fc.boolean(), count, (num, den, minus, marks) => {
        const form = readForm(`${num}/${den} width ${minus ? '-' : '+'} ${marks} mm`);
        expect(evaluateForm(form, { width: ticks(den * 7) })).toBe(num * 7 + (minus ? -1 : 1) * marks * 320);
      }),
      { seed: SEED },
    );
  });
});
