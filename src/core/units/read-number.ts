import type { LengthRefusal } from './length-refusals';

/** A number exactly as written: a fraction of whole numbers. */
export interface WrittenNumber {
  readonly over: bigint;
  readonly under: bigint;
  readonly form: 'whole' | 'decimal' | 'fraction' | 'mixed';
  /** Decimal places written; 0 for the other forms. */
  readonly places: number;
}

const MIXED = /^(\d+)(?: | ?\+ ?|- ?)(\d+) ?\/ ?(\d+)$/;
const FRACTION = /^(\d+) ?\/ ?(\d+)$/;
const DECIMAL = /^(\d*)[.,](\d+)$/;
const WHOLE = /^\d+$/;

/** A comma before exactly three figures is as likely a thousand as a decimal, unless nothing but 0 stands before it. */
const MAYBE_THOUSANDS = /^[1-9]\d{0,2},\d{3}$/;

/**
 * A whole number, decimal (point or comma), fraction, or whole number and fraction joined by a space, hyphen or plus.
 * Takes plain spelling only; anything that could be read in two ways is refused by code.
 */
export function readNumber(text: string): WrittenNumber | LengthRefusal {
  if (WHOLE.test(text)) return { over: BigInt(text), under: 1n, form: 'whole', places: 0 };
  if (MAYBE_THOUSANDS.test(text)) return 'separators';

  const decimal = DECIMAL.exec(text);
  if (decimal) {
    const [, whole = '', part = ''] = decimal;
    return {
      over: BigInt(whole + part),
      under: 10n ** BigInt(part.length),
      form: 'decimal',
      places: part.length,
    };
  }

  const fraction = FRACTION.exec(text);
  if (fraction) {
    const [over, under] = [BigInt(fraction[1]!), BigInt(fraction[2]!)];
    return under === 0n ? 'zero-denominator' : { over, under, form: 'fraction', places: 0 };
  }

  const mixed = MIXED.exec(text);
  if (mixed) {
    const [whole, over, under] = [BigInt(mixed[1]!), BigInt(mixed[2]!), BigInt(mixed[3]!)];
    if (under === 0n) return 'zero-denominator';
    if (over >= under) return 'improper-after-whole';
    return { over: whole * under + over, under, form: 'mixed', places: 0 };
  }
  return whyNotANumber(text);
}

function whyNotANumber(text: string): LengthRefusal {
  if (/^[-−] ?[\d.,]/.test(text)) return 'negative';
  if (/[/+\-.,]$/.test(text)) return 'unfinished';
  if ((text.match(/\//g) ?? []).length > 1) return 'two-fractions';
  if ((text.match(/[.,]/g) ?? []).length > 1) return 'separators';
  if (/\d[ +-]+[\d.,]/.test(text)) return 'two-numbers';
  return 'not-a-length';
}
