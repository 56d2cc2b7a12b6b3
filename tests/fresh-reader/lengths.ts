/** Lengths as they are printed, in 320ths of a millimeter. Nothing here comes from the program that prints them. */
const PER_MM = 320;
const PER_INCH = 25.4 * PER_MM;
/** "Scant" and "full" are said within 1/32 in or 1 mm of a mark only. */
const LEAN = { in: PER_INCH / 32, mm: PER_MM };

export type Unit = 'in' | 'mm';
export class Unreadable extends Error {}

const FRACTION = /^(?:(\d+) )?(\d+)\/(\d+)$/;

function bare(words: string, unit: Unit): number {
  const [, whole = '0', over, under] = FRACTION.exec(words) ?? [];
  const number = over === undefined ? Number(words) : Number(whole) + Number(over) / Number(under);
  if (!/^[\d ./]+$/.test(words) || !Number.isFinite(number)) throw new Unreadable(words);
  if (over !== undefined && Number(over) >= Number(under)) throw new Unreadable(words);
  return Math.round(number * (unit === 'in' ? PER_INCH : PER_MM));
}

/** `3 1/2`, `88.9 mm`, `2 1/8 full (54.334)`: what stands in brackets is the truth in millimeters, and must lie to that side of the mark. */
export function readLength(words: string, unit: Unit): number {
  const [, mark = '', own, lean, exact] =
    /^([\d ./]+?)(?: (in|mm))?(?: (full|scant) \(([\d.]+)(?: mm)?\))?$/.exec(words.trim()) ?? [];
  const said = bare(mark, (own as Unit | undefined) ?? unit);
  if (exact === undefined) return said;
  const truth = bare(exact, 'mm');
  const past = truth - said;
  if (lean === 'full' ? past <= 0 : past >= 0) throw new Unreadable(words);
  if (Math.abs(past) > LEAN[unit]) throw new Unreadable(words);
  return truth;
}

/** `a, b and c in`. */
export const readLengths = (words: string, unit: Unit): number[] =>
  words.split(/, | and /).map((one) => readLength(one, unit));

export type At = readonly [x: number, y: number];

/** `3 × 2`: across, then up. */
export function readPlace(words: string, unit: Unit): At {
  const [across = '', up = '', ...more] = words.split(' × ');
  if (more.length > 0) throw new Unreadable(words);
  return [readLength(across, unit), readLength(up, unit)];
}
