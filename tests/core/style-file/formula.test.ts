import { describe, expect, test } from 'vitest';
import { readFormula } from '../../../src/core/style-file/formula';
import { sayReason } from '../../../src/core/units/reason';

const known = {
  lengths: new Set(['width', 'depth', 'height', 't']),
  options: new Map([['top', ['lid', 'open']]]),
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
