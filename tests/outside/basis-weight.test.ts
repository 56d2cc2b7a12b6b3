import { describe, expect, it } from 'vitest';
import {
  BASIS_GRADES,
  type BasisGrade,
  estimateCaliperUm,
  gsmOfPounds,
  poundsOfGsm,
  readCaliperUm,
  readGrammage,
  soldAs,
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

describe('weights and calipers as a wrapper prints them', () => {
  // derived from the same definitions: 80 lb cover 216.3, 110 lb index 198.9, 60 lb text 88.8 g/m²; a point is 25.4 µm
  it.each([
    ['216', 216],
    ['216 gsm', 216],
    ['200 g/m²', 200],
    ['80 lb cover', 216],
    ['80# Cover', 216],
    ['110 lb. index', 199],
    ['60 lb text', 89],
    ['80lbs cardstock', 216],
  ])('“%s” is %d g/m²', (typed, gsm) => {
    expect(readGrammage(typed)).toBe(gsm);
  });

  it.each(['80 lb', '80 lb velvet', 'cover', '', '216 cover', '-5'])(
    '“%s” does not say a weight',
    (typed) => {
      expect(readGrammage(typed)).toBeNull();
    },
  );

  it.each([
    ['12 pt', 305],
    ['12pt', 305],
    ['10 points', 254],
    ['0.012 in', 305],
    ['0.3', 300],
    ['0.3 mm', 300],
    ['300 µm', 300],
  ])('“%s” is %d µm', (typed, caliperUm) => {
    expect(readCaliperUm(typed, 'mm')).toBe(caliperUm);
  });

  it.each(['thick', '12 px', ''])('“%s” is no caliper', (typed) => {
    expect(readCaliperUm(typed, 'mm')).toBeNull();
  });

  it('says which weight sold a grammage is, and nothing where none is near', () => {
    expect(soldAs(216)).toMatchObject({ pounds: 80, grade: { id: 'cover' } });
    expect(soldAs(300)).toMatchObject({ pounds: 110, grade: { id: 'cover' } });
    expect(soldAs(40)).toBeNull();
  });
});
