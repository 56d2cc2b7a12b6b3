import { describe, expect, it } from 'vitest';
import {
  BASIS_GRADES,
  type BasisGrade,
  estimateCaliperUm,
  gsmOfPounds,
  poundsOfGsm,
} from '../../shared/catalogue';

const grade = (id: BasisGrade['id']): BasisGrade => {
  const found = BASIS_GRADES.find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found;
};

describe('pounds of a basis size and grammes a square metre', () => {
  // source: a printer maker's paper guide and a paper converter's basis-weight table print these factors, g/m² per lb
  it.each([
    ['cover', 2.7, 2],
    ['text', 1.48, 2],
    ['index', 1.81, 2],
    ['bristol', 2.19, 2],
    ['tag', 1.63, 2],
    ['bond', 3.76, 2],
  ] as const)('one pound of %s is %d g/m²', (id, factor, places) => {
    expect(gsmOfPounds(1, grade(id)).toFixed(places)).toBe(factor.toFixed(places));
  });

  // source: the same printer maker's guide prints both as worked examples, rounding its factor first
  it.each([
    ['cover', 100, 270.42],
    ['text', 90, 133.2],
  ] as const)('%s of %d lb is %d g/m²', (id, pounds, printed) => {
    expect(Math.abs(gsmOfPounds(pounds, grade(id)) - printed)).toBeLessThan(0.05);
  });

  // derived: 453.59237 g / (500 × basis area); two decimals
  it.each([
    ['cover', 65, 175.77],
    ['cover', 80, 216.33],
    ['cover', 110, 297.45],
    ['index', 110, 198.88],
    ['text', 80, 118.41],
    ['bristol', 100, 219.28],
    ['tag', 125, 203.43],
    ['bond', 20, 75.19],
  ] as const)('%s of %d lb is %d g/m² by the definition', (id, pounds, gsm) => {
    expect(gsmOfPounds(pounds, grade(id))).toBeCloseTo(gsm, 2);
  });

  it('knows that 110 lb index is lighter than 80 lb cover', () => {
    expect(gsmOfPounds(110, grade('index'))).toBeLessThan(gsmOfPounds(80, grade('cover')));
  });

  it('turns grammage back into the same pounds', () => {
    for (const each of BASIS_GRADES)
      for (const pounds of each.weightsLb)
        expect(poundsOfGsm(gsmOfPounds(pounds, each), each)).toBeCloseTo(pounds, 9);
  });

  it('estimates caliper as grammage × bulk (ISO 534): 80 g/m² at 1.5 is 120 µm', () => {
    expect(estimateCaliperUm(80, 1.5)).toBe(120); // common practice, no source: the worked figure
    expect(estimateCaliperUm(300, 1.2)).toBe(360);
  });
});
