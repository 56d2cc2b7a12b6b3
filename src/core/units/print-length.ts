import { setFraction } from './fraction-signs';
import { isOnMark, type LengthUnit, nearestMark, type Ruler } from './marks';
import { TICKS_PER_INCH, TICKS_PER_MM, type Ticks, ticks } from './ticks';

/** A length in a maker's words. */
export interface PrintedLength {
  /** The nearest mark in plain text, `3 1/2 in`, `89 mm`; far from every mark the true length, `245.4 mm`. */
  readonly text: string;
  /** The same as a printer sets it: `3½ in`, `8⁷⁄₁₆ in`. */
  readonly typographic: string;
  /** True when what is printed is the length itself. */
  readonly exact: boolean;
  /** `scant`: the length is a little less than the mark named; `full`: a little more. */
  readonly lean: 'scant' | 'full' | null;
  /** The length in the other unit, to 0.1 mm or 1/16 in; `≈` before it when rounded. */
  readonly other: string;
}

const TENTH_MM = ticks(TICKS_PER_MM / 10);
const SIXTEENTH_INCH = ticks(TICKS_PER_INCH / 16);
/** The finest fraction an inch is spelled in; 1/64 in is a whole number of ticks, 1/128 is not. */
const SIXTY_FOURTH_INCH = ticks(TICKS_PER_INCH / 64);

/** A hair off a mark: as far as an eye still sets a length beside it. source: common practice, no source */
const A_HAIR: Readonly<Record<LengthUnit, Ticks>> = {
  in: ticks(TICKS_PER_INCH / 32),
  mm: ticks(TICKS_PER_MM),
};

/**
 * A length on the maker's own marks, with which way it leans off them, and in the other unit. Farther than a hair from every mark of a coarse
 * board it is the true length: to 0.1 mm, or in 1/32 in where it is that, else on sixteenths.
 */
export function printLength(length: Ticks, ruler: Ruler): PrintedLength {
  const mark = markToPrint(length, ruler);
  const { text, typographic } = spell(mark, ruler.unit);
  const isTrue = mark % ruler.finest !== 0;
  const lean = length === mark || (isTrue && ruler.unit === 'mm') ? null : length < mark ? 'scant' : 'full';
  return { text, typographic, exact: length === mark, lean, other: printOther(length, ruler.unit) };
}

function markToPrint(length: Ticks, { unit, finest }: Ruler): Ticks {
  const mark = nearestMark(length, finest);
  if (mark === 0 && length !== 0) return finer(length, unit);
  if (Math.abs(length - mark) <= A_HAIR[unit]) return mark;
  if (unit === 'mm') return nearestMark(length, TENTH_MM);
  return isOnMark(length, A_HAIR.in) ? length : nearestMark(length, SIXTEENTH_INCH);
}

/** Less than half a mark, as a tolerance is: to 1/64 in or 0.1 mm, or as it is where that would be nothing. */
function finer(length: Ticks, unit: LengthUnit): Ticks {
  const step = unit === 'in' ? SIXTY_FOURTH_INCH : TENTH_MM;
  const rounded = nearestMark(length, step);
  return rounded === 0 ? length : rounded;
}

/** The shortest spelling that reads back as exactly this length: what a length field holds. */
export function spellLength(length: Ticks, unit: LengthUnit): string {
  if (unit === 'in' && isOnMark(length, SIXTY_FOURTH_INCH)) return spell(length, 'in').text;
  return `${shortestDecimal(length, unit === 'in' ? TICKS_PER_INCH : TICKS_PER_MM)} ${unit}`;
}

function printOther(length: Ticks, unit: LengthUnit): string {
  const [other, step] = unit === 'in' ? (['mm', TENTH_MM] as const) : (['in', SIXTEENTH_INCH] as const);
  const rounded = nearestMark(length, step);
  return `${rounded === length ? '' : '≈ '}${spell(rounded, other).text}`;
}

function spell(mark: Ticks, unit: LengthUnit): Pick<PrintedLength, 'text' | 'typographic'> {
  if (unit === 'in' && isOnMark(mark, SIXTY_FOURTH_INCH)) return spellInches(mark);
  const text = `${shortestDecimal(mark, unit === 'in' ? TICKS_PER_INCH : TICKS_PER_MM)} ${unit}`;
  return { text, typographic: text };
}

function spellInches(mark: Ticks): Pick<PrintedLength, 'text' | 'typographic'> {
  const sign = mark < 0 ? '-' : '';
  const whole = Math.floor(Math.abs(mark) / TICKS_PER_INCH);
  let over = (Math.abs(mark) % TICKS_PER_INCH) / SIXTY_FOURTH_INCH;
  let under = 64;
  if (over === 0) return { text: `${sign}${whole} in`, typographic: `${sign}${whole} in` };
  for (; over % 2 === 0; over /= 2) under /= 2;
  const wholePart = whole === 0 ? '' : `${whole}`;
  return {
    text: `${sign}${wholePart}${wholePart && ' '}${over}/${under} in`,
    typographic: `${sign}${wholePart}${setFraction(over, under)} in`,
  };
}

/** The fewest decimals that round back to the same tick; four are always enough, since a tick is 1/320 mm or 1/8128 in. */
function shortestDecimal(length: Ticks, perUnit: number): string {
  for (let places = 0; places < 4; places++) {
    const text = (length / perUnit).toFixed(places);
    if (Math.round(Number(text) * perUnit) === length) return text;
  }
  return (length / perUnit).toFixed(4);
}
