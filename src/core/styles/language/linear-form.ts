import { gcd } from '../../plane';
import { roundToTick, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../../units/ticks';
import type { Len } from './types';

/** (Σ times · name + constant) / over, all whole numbers; the constant is in ticks. Names keep the order they were written in. */
export interface LinearForm {
  readonly text: Len;
  readonly terms: readonly { readonly name: string; readonly times: number }[];
  readonly constant: number;
  readonly over: number;
}

type Ratio = readonly [num: number, den: number];

const add = ([a, b]: Ratio, [c, d]: Ratio): Ratio => {
  const num = a * d + c * b;
  const den = b * d;
  const shared = gcd(num, den) || 1;
  return [num / shared, den / shared];
};

/** '3', '1/3', '3 1/2', '1.5' as a ratio. */
function readNumber(text: string): Ratio {
  const [whole = '0', part] = text.split(/\s+/);
  if (part !== undefined) return add(readNumber(whole), readNumber(part));
  const [num = '0', den] = whole.split('/');
  const decimals = num.split('.')[1]?.length ?? 0;
  return add([0, 1], [Math.round(Number(num) * 10 ** decimals), 10 ** decimals * Number(den ?? 1)]);
}

const TERM =
  /\s*([+-]?)\s*(\d+(?:\.\d+)?\s+\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)?\s*([a-zA-Z][a-zA-Z0-9]*)?(?:\s*\/\s*(\d+))?\s*/y;
const UNIT: Readonly<Record<string, number>> = { in: TICKS_PER_INCH, mm: TICKS_PER_MM };

/** Reads `'2 width + tab'`, `'depth/2'`, `'1/3 height'`, `'width + 2t - 1/8 in'`. Throws RangeError on anything else: only authors write these. */
export function readForm(text: Len): LinearForm {
  const slip = (why: string) => new RangeError(`'${text}' is not a linear form: ${why}`);
  const sums = new Map<string, Ratio>();
  let constant: Ratio = [0, 1];
  let at = 0;
  while (at < text.length || at === 0) {
    TERM.lastIndex = at;
    const [all, sign, number, word, under] = TERM.exec(text) ?? [''];
    if (all === '' || (number === undefined && word === undefined)) throw slip(`stuck at column ${at + 1}`);
    if (at > 0 && sign === '') throw slip(`a plus or minus is missing at column ${at + 1}`);
    at += all.length;
    const [num, den] = readNumber(number ?? '1');
    const times: Ratio = [sign === '-' ? -num : num, den * Number(under ?? 1)];
    if (times[1] === 0) throw slip('it divides by nothing');
    const unit = word === undefined ? undefined : UNIT[word];
    if (word === undefined && num !== 0) throw slip('a bare number needs a unit, in or mm');
    if (unit !== undefined) {
      if (number === undefined) throw slip(`a unit needs a number before it`);
      constant = add(constant, [times[0] * unit, times[1]]);
    } else if (word !== undefined) sums.set(word, add(sums.get(word) ?? [0, 1], times));
  }
  return overOne(text, sums, constant);
}

/** Brings every coefficient over one denominator, so that a value is one sum of whole numbers and one division. */
function overOne(text: Len, sums: ReadonlyMap<string, Ratio>, constant: Ratio): LinearForm {
  let over = constant[1];
  for (const [, den] of sums.values()) over = (over * den) / gcd(over, den);
  const whole = ([num, den]: Ratio) => (num * over) / den;
  const terms = [...sums]
    .filter(([, [num]]) => num !== 0)
    .map(([name, ratio]) => ({ name, times: whole(ratio) }));
  return { text, terms, constant: whole(constant), over };
}

const read = new Map<Len, LinearForm>();

/** `readForm`, each text once. */
export function formOf(text: Len): LinearForm {
  const known = read.get(text);
  if (known !== undefined) return known;
  const form = readForm(text);
  read.set(text, form);
  return form;
}

/** The form before rounding: a whole number of `1/over` ticks. A name without a value throws RangeError. */
function sum(form: LinearForm, values: Readonly<Record<string, number>>): number {
  let total = form.constant;
  for (const { name, times } of form.terms) {
    const value = values[name];
    if (value === undefined) throw new RangeError(`'${form.text}' asks for ${name}, which has no value`);
    total += times * value;
  }
  return total;
}

/** A form's value: exact, then rounded to a tick once. `values` in ticks by name. */
export const evaluateForm = (form: LinearForm, values: Readonly<Record<string, number>>): Ticks =>
  roundToTick(sum(form, values) / form.over);

/** A form's value rounded up to a whole number of `mark`s (ticks): how an allowance meets a ruler. */
export const evaluateUp = (form: LinearForm, values: Readonly<Record<string, number>>, mark: Ticks): Ticks =>
  roundToTick(Math.ceil(sum(form, values) / (form.over * mark)) * mark);

/** The same form with named sums put in place of their names, until only `t`, symbols and quantities are left. */
export function expandForm(form: LinearForm, lets: Readonly<Record<string, Len>>): LinearForm {
  if (!form.terms.some(({ name }) => name in lets)) return form;
  const sums = new Map<string, Ratio>();
  let constant: Ratio = [form.constant, form.over];
  for (const { name, times } of form.terms) {
    const named = lets[name];
    const inner = named === undefined ? { terms: [{ name, times: 1 }], constant: 0, over: 1 } : formOf(named);
    constant = add(constant, [times * inner.constant, form.over * inner.over]);
    for (const part of inner.terms)
      sums.set(part.name, add(sums.get(part.name) ?? [0, 1], [times * part.times, form.over * inner.over]));
  }
  return expandForm(overOne(form.text, sums, constant), lets);
}

/** How a number came about: `printForm(form, name => '3 1/2 in', c => …)` gives `2 × 3 1/2 in + 1 in`. `show` prints a name, `length` a constant in ticks. */
export function printForm(
  form: LinearForm,
  show: (name: string) => string,
  length: (constant: Ticks) => string,
): string {
  const parts = form.terms.map(({ name, times }) => ({
    minus: times < 0,
    text: product(times, form.over, show(name)),
  }));
  if (form.constant !== 0 || parts.length === 0)
    parts.push({ minus: form.constant < 0, text: length(roundToTick(Math.abs(form.constant) / form.over)) });
  return parts
    .map(({ minus, text }, at) => (at === 0 ? (minus ? '−' : '') : minus ? ' − ' : ' + ') + text)
    .join('');
}

function product(times: number, over: number, value: string): string {
  const shared = gcd(times, over);
  const num = Math.abs(times) / shared;
  const den = over / shared;
  return `${num === 1 ? '' : `${num} × `}${value}${den === 1 ? '' : ` ÷ ${den}`}`;
}
