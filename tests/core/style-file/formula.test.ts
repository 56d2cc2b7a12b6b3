import { describe, expect, test } from 'vitest';
import { readFormula, readWorking } from '../../../src/core/style-file/formula';
import type { KnownNames, Working } from '../../../src/core/style-file/formula-parts';
import { sayReason } from '../../../src/core/units/reason';

const known: KnownNames = {
  lengths: new Set(['width', 'depth', 'height', 't']),
  options: new Map([
    ['top', ['lid', 'open']],
    ['sides', ['6', '8', '3']],
  ]),
};
const values = { width: 30, depth: 40, height: 20, t: 0.3 };

const counted = (text: string, power = 1, chosen = {}): number => {
  const reading = readFormula(text, power, known);
  if (!reading.ok) throw new Error(says(text, power));
  return reading.formula.of(values, chosen);
};
const says = (text: string, power = 1): string => {
  const reading = readFormula(text, power, known);
  return reading.ok ? 'read' : sayReason(reading.slip, { length: String, money: String });
};

describe('a formula', () => {
  test.each([
    // hypot(30, 40) is the 3-4-5 triangle ten times; half of 20 is 10.
    ['hypot(width, depth)', 1, 50],
    ['min(height, depth / 2) - 1/8 * in', 1, 20 - 25.4 / 8],
    ['sqrt(width ** 2 + depth * depth)', 1, 50],
    ['width * depth * height / 3', 3, 8000],
    ['(width + depth) * sqrt(2)', 1, 70 * Math.SQRT2],
    // 30 over 60 is a half: 60° and 30°.
    ['acos(width / (2 * width))', 0, 60],
    ['90 - asin(0.5)', 0, 60],
    ['atan2(width, width)', 0, 45],
    ['t >= 0.4 * mm ? 2 * t : 0', 1, 0],
    ['-width + max(width, depth, height)', 1, 10],
    ['2 + 3 * 4 - 10 / 5', 0, 12],
    ['0', 3, 0],
  ])('%s', (text, power, wanted) => {
    expect(counted(text, power)).toBeCloseTo(wanted, 9);
  });

  test.each([
    // The sine is the area under the cosine: from 0 to 30°, a half, in radians.
    ['pi / 180 * integral(a, 0, 30, cos(a))', 0, 0.5],
    // Under x² from 0 to 30 mm lie 30³/3 mm³.
    ['integral(x, 0, width, x ** 2)', 3, 9000],
    ['integral(x, width, 0, x ** 2)', 3, -9000],
    // From 0 to 45° under √(1 - 2 sin² a) lies the second lemniscate constant, 0.5990701173677961. Source: OEIS A076390, from memory.
    ['pi / 180 * integral(a, 0, 45, sqrt(max(0, 1 - 2 * sin(a) ** 2)))', 0, 0.5990701173677961],
    // Two, one after the other, over the same name.
    ['integral(x, 0, depth, 1) + integral(x, 0, width, 1)', 1, 70],
  ])('%s', (text, power, wanted) => {
    // Where the last one meets the axis upright, Simpson's rule is off by some millionths.
    expect(counted(text, power) / wanted).toBeCloseTo(1, 4);
  });

  test('takes a choice for the number it stands for, and the first choice where none is made', () => {
    expect(counted('360 / number(sides)', 0, { sides: '8' })).toBe(45);
    expect(counted('360 / number(sides)', 0)).toBe(60);
  });

  test('uses workings: in any unit, not rounded, each counted once however often it stands', () => {
    const workings = new Map<string, Working>();
    const all = { ...known, workings };
    const add = (name: string, text: string, taken = false) => {
      const reading = readWorking(name, text, all, taken);
      if (reading.ok) workings.set(name, reading.working);
      return reading.ok ? 'read' : sayReason(reading.slip, { length: String, money: String });
    };
    expect(add('share', 'width / depth')).toBe('read');
    // Each doubles the one before it: were they counted again each time, the last would take 2^40 steps.
    expect(add('w0', 'share')).toBe('read');
    for (let at = 1; at <= 40; at++) expect(add(`w${at}`, `w${at - 1} + w${at - 1}`)).toBe('read');
    const reading = readFormula('w40 * t', 1, all);
    const before = performance.now();
    expect(reading.ok && reading.formula.of(values, {})).toBeCloseTo(0.75 * 2 ** 40 * 0.3, 0);
    // Other sizes, another number: nothing is kept from one count to the next.
    expect(reading.ok && reading.formula.of({ ...values, width: 80 }, {})).toBeCloseTo(2 * 2 ** 40 * 0.3, 0);
    expect(performance.now() - before).toBeLessThan(1000);
    expect(add('width', '1')).toBe('The working width has a name that is taken.');
    expect(add('mm', '1')).toBe('The working mm has a name that is taken.');
    expect(add('sides', '1')).toBe('The working sides has a name that is taken.');
    expect(add('later', '1', true)).toBe('The working later has a name that is taken.');
    expect(add('truth', 'width < depth')).toBe('truth needs numbers on both sides.');
  });

  test('may ask how an option is chosen', () => {
    expect(counted('top == "open" ? 0 : 2 * t', 1, { top: 'open' })).toBe(0);
    expect(counted('top == "open" ? 0 : 2 * t', 1, { top: 'lid' })).toBeCloseTo(0.6);
  });

  test.each([
    ['width + 3', '+ joins a length and a number or degrees.'],
    ['width * depth', 'The formula width * depth gives an area, and a length is needed.'],
    ['width + depth * depth', '+ joins a length and an area.'],
    ['sqrt(width)', 'sqrt is given a length, which has no square root here.'],
    ['sin(width)', 'The function sin is given a length.'],
    ['widht', 'The name widht has no value here.'],
    ['top', 'The name top has no value here.'],
    ['top == "shut" ? t : 0', '== asks for an option and one of its choices, not top and shut.'],
    ['alert(1)', 'There is no function alert here.'],
    ['constructor(1)', 'There is no function constructor here.'],
    ['width.constructor', 'A formula can’t hold MemberExpression.'],
    ['this', 'A formula can’t hold ThisExpression.'],
    ['[width]', 'A formula can’t hold ArrayExpression.'],
    ['width depth', 'A formula can’t hold Compound.'],
    ['width & depth', 'The sign & can’t be used.'],
    ['!width', 'The sign ! can’t be used.'],
    ['width ? t : t', '? needs a comparison before it.'],
    ['(width < depth) + t', '+ needs numbers on both sides.'],
    ['min(width)', 'The function min is given 1 values.'],
    ['width ** 9', '** needs a whole number from 1 to 4 after it.'],
    ['width ** 4 * width ** 4', 'A length to the power 8 is more than can be counted with.'],
    ['min(width, ', 'The formula min(width,  can’t be read at letter 12.'],
    ['"width"', 'width is no number.'],
    ['1e999 * mm', 'Infinity is no number.'],
    ['number(top)', 'The function number is given top, which is no option whose choices are all numbers.'],
    [
      'number(width)',
      'The function number is given width, which is no option whose choices are all numbers.',
    ],
    ['number(1)', 'The function number is given a sum, which is no option whose choices are all numbers.'],
    ['x + integral(x, 0, width, x)', 'The name x has no value here.'],
    ...[
      'integral(x, 0, width)',
      'integral(width, 0, depth, width)',
      'integral(x, 0, width, integral(y, 0, x, y))',
    ].map((text) => [text, 'An integral needs a new name, where it begins, where it ends and a formula.']),
    [
      'integral(x, 0, width, x)',
      'The formula integral(x, 0, width, x) gives an area, and a length is needed.',
    ],
    ['integral(x, t, 1, x)', 'integral joins a length and a number or degrees.'],
    [`width ${'+ width '.repeat(60)}`, 'This formula has 486 letters.'],
  ])('%s is refused', (text, wanted) => {
    expect(says(text)).toBe(wanted);
  });

  test('runs nothing: brackets as deep as a formula may be long are read or refused, and leave nothing behind', () => {
    const before = Object.keys(globalThis).length;
    expect(says(`${'('.repeat(148)}width${')'.repeat(147)}`)).toMatch(/can’t be read|read/);
    expect(says('globalThis.x = 1')).not.toBe('read');
    expect(Object.keys(globalThis)).toHaveLength(before);
  });
});
