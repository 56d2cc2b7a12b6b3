declare const unit: unique symbol;

/** A length as a whole number of 1/320 mm: 1/64 in (127) and 0.1 mm (32) are both exact, and so are all their sums. */
export type Ticks = number & { readonly [unit]: 'ticks' };

export const TICKS_PER_MM = 320; // source: definition, the smallest unit common to 1/64 in and 0.1 mm
export const TICKS_PER_INCH = 8128; // source: 25.4 mm by definition, × 320

/** Names a whole number as ticks. Throws RangeError on a fraction or NaN: that is a programmer's slip, never a maker's. */
export function ticks(count: number): Ticks {
  if (!Number.isSafeInteger(count)) throw new RangeError(`not a whole number of ticks: ${count}`);
  return (count === 0 ? 0 : count) as Ticks;
}

/** The nearest tick to an irrational length; `count` in ticks. Used once, where a point is made. */
export const roundToTick = (count: number): Ticks => ticks(Math.round(count));

/** `inches(3, 1, 2)` is 3 1/2 in. Throws RangeError if the fraction falls between ticks. */
export const inches = (whole: number, over = 0, under = 1): Ticks =>
  ticks(whole * TICKS_PER_INCH + (over * TICKS_PER_INCH) / under);

/** Millimeters to ticks, to the nearest tick. */
export const millimetres = (mm: number): Ticks => roundToTick(mm * TICKS_PER_MM);

/** Ticks to millimeters; exact, since 1/320 mm is 0.003125 mm. */
export const toMm = (length: number): number => length / TICKS_PER_MM;

/** Ticks to inches, for drawing and reading only. */
export const toInches = (length: number): number => length / TICKS_PER_INCH;
