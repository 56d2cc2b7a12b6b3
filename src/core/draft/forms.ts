import { gcd } from '../plane';
import { formOf, type LinearForm } from '../styles/language/linear-form';
import type { Len } from '../styles/language/types';
import { TICKS_PER_INCH, TICKS_PER_MM } from '../units/ticks';

/** Numbers, names and everything between, so that `2width` holds the name width and `tab2` is one name. */
const PARTS = /[a-zA-Z][a-zA-Z0-9]*|\d+(?:\.\d+)?|[^a-zA-Z0-9]+/g;

/** A form or formula with one name changed wherever it stands. */
export const renamedIn = (text: string, from: string, to: string): string =>
  (text.match(PARTS) ?? []).map((part) => (part === from ? to : part)).join('');

/** The names in a form or formula; units and functions among them. */
export const namesIn = (text: string): ReadonlySet<string> =>
  new Set((text.match(PARTS) ?? []).filter((part) => /^[a-zA-Z]/.test(part)));

/** The form read; null where it can’t be. */
export function readable(text: string): LinearForm | null {
  try {
    return formOf(text.trim());
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

type Ratio = readonly [num: number, den: number];

const lowest = (num: number, den: number): Ratio => {
  const part = gcd(num, den) || 1;
  return [Math.abs(num) / part, den / part];
};

/** A sum of signed terms as text; a length of nothing where there are none. */
const sumOf = (
  terms: readonly { readonly minus: boolean; readonly text: string }[],
  nothing: string,
): string =>
  terms.length === 0
    ? nothing
    : terms
        .map(({ minus, text }, at) => (at === 0 ? (minus ? '-' : '') : minus ? ' - ' : ' + ') + text)
        .join('');

/** A length in ticks as a maker writes it: in inches where it is whole sixty-fourths, else in millimeters. */
function constantText(ticks: number): string {
  const of64 = (ticks * 64) / TICKS_PER_INCH;
  if (!Number.isInteger(of64)) return `${Number((ticks / TICKS_PER_MM).toFixed(4))} mm`;
  const whole = Math.floor(of64 / 64);
  const [num, den] = lowest(of64 % 64, 64);
  return `${[whole > 0 || num === 0 ? whole : '', num > 0 ? `${num}/${den}` : ''].filter((part) => part !== '').join(' ')} in`;
}

/** A part of a length, such as seven eighths of `height + 1 in`, as a form; `bare` leaves out what is no name. */
export function shareOf(text: Len, [num, den]: Ratio, bare = false): Len {
  const { terms, constant, over } = formOf(text);
  const said = terms.map(({ name, times }) => {
    const [top, under] = lowest(times * num, over * den);
    const share = under === 1 ? `${top}` : `${top}/${under}`;
    return { minus: times * num < 0, text: share === '1' ? name : `${share} ${name}` };
  });
  const rest = (constant * num) / (over * den);
  if (rest !== 0 && !bare) said.push({ minus: rest < 0, text: constantText(Math.abs(rest)) });
  return sumOf(said, '0 in');
}

/** A length as a formula of a style file, every product and unit written out; `less` is left out of it. */
export function formulaOf(text: Len, less?: string): string {
  const { terms, constant, over } = formOf(text);
  const said = terms
    .filter(({ name }) => name !== less)
    .map(({ name, times }) => {
      const [top, under] = lowest(times, over);
      return {
        minus: times < 0,
        text: `${top === 1 ? '' : `${top} * `}${name}${under === 1 ? '' : ` / ${under}`}`,
      };
    });
  const restMm = constant / over / TICKS_PER_MM;
  if (restMm !== 0) said.push({ minus: restMm < 0, text: `${Number(Math.abs(restMm).toFixed(6))} * mm` });
  return sumOf(said, '0');
}

/** A length with so many ticks more or less in it: the names stay, and the plain length beside them grows or shrinks. Null where it can’t be read. */
export function withTicksMore(text: Len, by: number): Len | null {
  const form = readable(text);
  if (form === null) return null;
  const rest = form.constant / form.over + by;
  const named = shareOf(text, [1, 1], true);
  if (form.terms.length === 0) return rest < 0 ? null : constantText(rest);
  if (rest === 0) return named;
  return `${named} ${rest < 0 ? '-' : '+'} ${constantText(Math.abs(rest))}`;
}
