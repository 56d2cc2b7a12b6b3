import { spellPlainly } from './fraction-signs';
import { type RefusedLength, refuseLength } from './length-refusals';
import { type LengthUnit, nearestMark, USUAL_FINEST } from './marks';
import { readNumber, type WrittenNumber } from './read-number';
import { TICKS_PER_INCH, TICKS_PER_MM, type Ticks, ticks } from './ticks';

export type TypedUnit = LengthUnit | 'cm';

/** Why a reading deserves to be said back loudly: it is legal, and a common slip looks just the same. */
type StrongEcho = 'improper-fraction' | 'other-unit' | 'fraction-of-millimetre' | 'three-decimals';

/** What was made of the maker's text, so that the page can say it back. */
interface HeardLength {
  readonly unit: TypedUnit;
  readonly echo: StrongEcho | null;
  /** What they typed minus the length kept, in ticks: 0 when exact, never beyond half a tick. */
  readonly offTicks: number;
  /** The nearest mark of their ruler, to offer when the length lies between marks. */
  readonly nearestMark: Ticks;
}

export type ReadLength =
  | { readonly ok: true; readonly length: Ticks; readonly heard: HeardLength }
  | RefusedLength;

/** Longest length the workbook keeps. source: `lengthMm` of the file format. */
export const LONGEST_LENGTH = ticks(2000 * TICKS_PER_MM);

const TICKS_PER: Readonly<Record<TypedUnit, bigint>> = {
  in: BigInt(TICKS_PER_INCH),
  mm: BigInt(TICKS_PER_MM),
  cm: BigInt(10 * TICKS_PER_MM),
};

// biome-ignore format: one line a unit
const UNIT_NAMES = new Map<string, TypedUnit>([
  ...['in', 'inch', 'inches', '"', '″', '”', '“', '„', 'ʺ', '＂', "''", '′′', '’’'].map((name) => [name, 'in'] as const),
  ...['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((name) => [name, 'mm'] as const),
  ...['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((name) => [name, 'cm'] as const),
]);
const FEET = /^(?:['’′‘ʹ]|ft\b|foot\b|feet\b)/;

/** No length needs more; beyond it something was pasted by mistake. */
const LONGEST_TEXT = 40;

/**
 * What a maker typed into a length field of this unit, as ticks (rounded to the nearest, the error said), or a refusal that keeps their text.
 * A written unit overrides the field's. Fractions, decimals with point or comma, typographic fractions and prime marks are read;
 * whatever could mean two things is refused. Never throws. `finest` is their ruler's, for the mark to offer.
 */
export function readLength(
  text: string,
  fieldUnit: LengthUnit,
  finest = USUAL_FINEST[fieldUnit],
): ReadLength {
  if (text.length > LONGEST_TEXT) return refuseLength('not-a-length', text);
  const { amount, unitName } = splitUnit(spellPlainly(text));
  const typedUnit = UNIT_NAMES.get(unitName.replace(/\.$/, ''));

  if (unitName !== '' && typedUnit === undefined) {
    if (amount !== '' && FEET.test(unitName)) return refuseLength('feet', text);
    return refuseLength(
      amount !== '' && /^\p{L}+\.?$/u.test(unitName) ? 'unknown-unit' : 'not-a-length',
      text,
    );
  }
  if (amount === '') return refuseLength(typedUnit ? 'no-number' : 'empty', text);

  const number = readNumber(amount);
  if (typeof number === 'string') return refuseLength(number, text);

  const unit = typedUnit ?? fieldUnit;
  const exactTicks = number.over * TICKS_PER[unit];
  const nearest = (2n * exactTicks + number.under) / (2n * number.under);
  if (nearest > BigInt(LONGEST_LENGTH)) return refuseLength('too-long', text);
  if (nearest === 0n && exactTicks > 0n) return refuseLength('too-short', text);

  const length = ticks(Number(nearest));
  const offTicks = Number(exactTicks - nearest * number.under) / Number(number.under);
  const echo = strongEcho(number, unit, fieldUnit);
  return { ok: true, length, heard: { unit, echo, offTicks, nearestMark: nearestMark(length, finest) } };
}

/** The amount is everything up to the first character that no number has; the rest must be a unit. */
function splitUnit(plain: string): { amount: string; unitName: string } {
  const [, amount = '', unitName = ''] = /^([\d.,/+\-− ]*)(.*)$/su.exec(plain) ?? [];
  return { amount: amount.trim(), unitName: unitName.toLowerCase() };
}

function strongEcho(number: WrittenNumber, unit: TypedUnit, fieldUnit: LengthUnit): StrongEcho | null {
  if (number.form === 'fraction' && number.over >= number.under) return 'improper-fraction';
  if (unit === 'in' ? fieldUnit === 'mm' : fieldUnit === 'in') return 'other-unit';
  if (unit !== 'in' && (number.form === 'fraction' || number.form === 'mixed'))
    return 'fraction-of-millimetre';
  if (unit === 'mm' && number.places === 3) return 'three-decimals';
  return null;
}
