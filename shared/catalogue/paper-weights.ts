import { type LengthUnit, readLength, toMm } from '../../src/core/units';
/** A trade grade: pounds are counted on a ream of 500 sheets of its own basis size, so pounds without a grade mean nothing. */
export interface BasisGrade {
  readonly id: 'cover' | 'text' | 'index' | 'bristol' | 'tag' | 'bond';
  readonly name: string;
  readonly widthIn: number;
  readonly heightIn: number;
  /** Pounds commonly sold. */
  readonly weightsLb: readonly number[];
  readonly source: string;
}

const SOURCE =
  'basis size: a paper converter’s published basis-weight table; weights: common practice, no source';

// biome-ignore format: a table
export const BASIS_GRADES: readonly BasisGrade[] = [
  { id: 'cover', name: 'cover', widthIn: 20, heightIn: 26, weightsLb: [50, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140], source: SOURCE },
  { id: 'text', name: 'text, book, offset', widthIn: 25, heightIn: 38, weightsLb: [60, 70, 80, 100], source: SOURCE },
  { id: 'index', name: 'index', widthIn: 25.5, heightIn: 30.5, weightsLb: [90, 110, 140], source: SOURCE },
  { id: 'bristol', name: 'bristol', widthIn: 22.5, heightIn: 28.5, weightsLb: [67, 80, 100], source: SOURCE },
  { id: 'tag', name: 'tag, newsprint', widthIn: 24, heightIn: 36, weightsLb: [100, 125, 150], source: SOURCE },
  { id: 'bond', name: 'bond, writing', widthIn: 17, heightIn: 22, weightsLb: [20, 24, 28, 32], source: SOURCE },
];

const GRAMS_PER_POUND = 453.59237; // source: definition of the avoirdupois pound
const SQUARE_METRES_PER_SQUARE_INCH = 0.0254 ** 2; // source: 1 in = 25.4 mm by definition
const SHEETS_PER_REAM = 500; // source: the published basis-weight table

const gsmPerPound = ({ widthIn, heightIn }: BasisGrade): number =>
  GRAMS_PER_POUND / (SHEETS_PER_REAM * widthIn * heightIn * SQUARE_METRES_PER_SQUARE_INCH);

/** Grammage of so many pounds of a grade, g/m², not rounded. */
export const gsmOfPounds = (pounds: number, grade: BasisGrade): number => pounds * gsmPerPound(grade);

/** Pounds of a grade that a grammage comes to, not rounded. */
export const poundsOfGsm = (gsm: number, grade: BasisGrade): number => gsm / gsmPerPound(grade);

/** Bulk (cm³/g) by finish, to estimate caliper before it is measured. */
export interface Finish {
  readonly id: 'smooth' | 'uncoated' | 'felt' | 'coated';
  readonly name: string;
  readonly bulk: number;
  readonly source: string;
}

// biome-ignore format: a table
export const FINISHES: readonly Finish[] = [
  { id: 'uncoated', name: 'uncoated cardstock', bulk: 1.25, source: 'common practice, no source: 1.15 to 1.45' },
  { id: 'smooth', name: 'smooth, calendered', bulk: 1.15, source: 'common practice, no source: chart calipers of 65 lb and 120 lb cover' },
  { id: 'felt', name: 'felt or textured', bulk: 1.5, source: 'from memory: up to 1.6' },
  { id: 'coated', name: 'coated', bulk: 0.9, source: 'from memory: 0.8 to 1.0' },
];

/** Thickness to expect in micrometers: grammage × bulk (ISO 534 defines bulk so). An estimate: two papers of one weight differ, so measure. */
export const estimateCaliperUm = (gsm: number, bulk: number): number => Math.round(gsm * bulk);

/** What a wrapper prints after the pounds, by grade; the first word of each name is the grade's own. */
const GRADE_WORDS: Readonly<Record<string, BasisGrade['id']>> = {
  cover: 'cover',
  cardstock: 'cover',
  text: 'text',
  book: 'text',
  offset: 'text',
  index: 'index',
  bristol: 'bristol',
  tag: 'tag',
  newsprint: 'tag',
  bond: 'bond',
  writing: 'bond',
};

/**
 * Whole g/m² of a weight as a wrapper prints it: `216`, `216 gsm`, `80 lb cover`, `110# index`. Null for pounds without a grade, and for
 * what does not read.
 */
export function readGrammage(text: string): number | null {
  const [, number, unit = '', word = ''] =
    /^(\d+(?:[.,]\d+)?)\s*(g\/m²|g\/m2|gsm|g|lbs?\.?|#|pounds?)?\s*([a-z]*)$/.exec(
      text.trim().toLowerCase(),
    ) ?? [];
  if (number === undefined) return null;
  const amount = Number(number.replace(',', '.'));
  if (!/^(lb|#|pound)/.test(unit)) return word === '' ? Math.round(amount) : null;
  const grade = BASIS_GRADES.find(({ id }) => id === GRADE_WORDS[word]);
  return grade ? Math.round(gsmOfPounds(amount, grade)) : null;
}

/** The grade and pounds sold that lie within 2 % of a grammage, cover first; null where none does. */
export function soldAs(gsm: number): { readonly pounds: number; readonly grade: BasisGrade } | null {
  for (const grade of BASIS_GRADES)
    for (const pounds of grade.weightsLb)
      if (Math.abs(gsmOfPounds(pounds, grade) - gsm) <= gsm * 0.02) return { pounds, grade };
  return null;
}

const UM_PER_POINT = 25.4; // source: a point of caliper is 1/1000 in, by definition

/** Caliper in whole micrometers: `0.3`, `0.3 mm`, `300 µm`, `12 pt`, `0.012 in`. Null for what does not read; a bare number is in `unit`. */
export function readCaliperUm(text: string, unit: LengthUnit): number | null {
  const [, number, small = ''] =
    /^(\d+(?:[.,]\d+)?)\s*(pts?\.?|points?|mils?|µm|μm|um)$/.exec(text.trim().toLowerCase()) ?? [];
  if (number !== undefined)
    return Math.round(Number(number.replace(',', '.')) * (/^[µμu]/.test(small) ? 1 : UM_PER_POINT));
  const read = readLength(text, unit);
  return read.ok ? Math.round((read.length + read.heard.offTicks) * toMm(1000)) : null;
}

/** A card weight in every way a shop may write it, rounded as shops round. `soldExactly`: the pounds are a weight sold within 2 % of it. */
export function weightWays({ gsm, caliperUm }: { readonly gsm: number; readonly caliperUm: number }) {
  const sold = soldAs(gsm);
  const cover = BASIS_GRADES[0] as BasisGrade;
  return {
    gsm: Math.round(gsm),
    pounds: sold?.pounds ?? Math.round(poundsOfGsm(gsm, sold?.grade ?? cover)),
    grade: (sold?.grade ?? cover).name,
    soldExactly: sold !== null,
    mm: (caliperUm / 1000).toFixed(2),
    points: Math.round(caliperUm / UM_PER_POINT),
  };
}
