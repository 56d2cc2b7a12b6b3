import { nameValues, type Sizing } from '../net';
import { expandForm, formOf } from '../styles/language/linear-form';
import type { BoxStyle, Chosen, ConstraintSpec, Len } from '../styles/language/types';
import { limitsFor } from '../styles/shapes/limits-for';
import { ticks } from '../units';
import type { CoordinateForm } from './mark-forms';

/**
 * A reader of the style's forms as sums over its symbols alone: sums are put in place of their names; the caliper, allowances and quantities
 * stand as they are at `sizing`. Ticks.
 */
export function overSymbols(style: BoxStyle, sizing: Sizing): (text: Len) => CoordinateForm {
  const symbols = Object.keys(style.symbols);
  const { lengths } = nameValues(style, sizing);
  return (text) => {
    const form = expandForm(formOf(text), style.lets ?? {});
    const times = symbols.map(
      (name) => (form.terms.find((term) => term.name === name)?.times ?? 0) / form.over,
    );
    const fixed = form.terms.filter(({ name }) => !symbols.includes(name));
    const constant =
      fixed.reduce((sum, { name, times: n }) => sum + n * (lengths[name] ?? 0), form.constant) / form.over;
    return { constant, times };
  };
}

const NUDGE = ticks(1016); // 1/8 in: whole after division by two, three and four

/**
 * The inside room as forms in the style's symbols. Where it hangs on a quantity that is not linear, its slope at `sizing` stands for it, and
 * what is found must be laid again before it counts.
 */
export function insideForms(style: BoxStyle, sizing: Sizing): CoordinateForm[] {
  const symbols = Object.keys(style.symbols);
  const over = overSymbols(style, sizing);
  const bends = new Set([...Object.keys(style.quantities ?? {}), ...Object.keys(style.allowances ?? {})]);
  const still = nameValues(style, sizing).lengths;
  const nudged = symbols.map(
    (name) =>
      nameValues(style, { ...sizing, sizes: { ...still, [name]: ticks((still[name] ?? 0) + NUDGE) } })
        .lengths,
  );
  return style.inside.map((text) => {
    const form = expandForm(formOf(text), style.lets ?? {});
    if (!form.terms.some(({ name }) => bends.has(name))) return over(text);
    const exactValue = (lengths: Readonly<Record<string, number>>) =>
      form.terms.reduce((sum, { name, times }) => sum + times * (lengths[name] ?? 0), form.constant) /
      form.over;
    const value = exactValue(still);
    const times = nudged.map((lengths) => (exactValue(lengths) - value) / NUDGE);
    const constant = value - symbols.reduce((sum, name, i) => sum + (times[i] ?? 0) * (still[name] ?? 0), 0);
    return { constant, times };
  });
}

/** Whether some side of the room hangs on a quantity that is not linear. */
export const roomBends = ({ inside, lets, quantities = {} }: BoxStyle): boolean =>
  inside.some((text) => expandForm(formOf(text), lets ?? {}).terms.some(({ name }) => name in quantities));

/**
 * Every bound that stops or spoils the box, as a form that must not be negative: the style's constraints, and each symbol's own least and most.
 * `advised`: which of those it keeps that a style only advises.
 */
export function limitsOf(
  style: BoxStyle,
  chosen: Chosen,
  over: (text: Len) => CoordinateForm,
  advised: (bound: ConstraintSpec) => boolean = () => false,
): CoordinateForm[] {
  const bounds = [
    ...limitsFor(style, chosen).filter((bound) => bound.severity !== 'note' || advised(bound)),
    ...Object.entries(style.symbols).flatMap(([symbol, { min, max }]) => [
      { symbol, atLeast: min },
      { symbol, atMost: max },
    ]),
  ];
  return bounds.flatMap((bound): CoordinateForm[] => {
    const { symbol, atLeast, atMost } = bound as { symbol: string; atLeast?: Len; atMost?: Len };
    return [
      ...(atLeast === undefined ? [] : [minus(over(symbol), over(atLeast))]),
      ...(atMost === undefined ? [] : [minus(over(atMost), over(symbol))]),
    ];
  });
}

const minus = (a: CoordinateForm, b: CoordinateForm): CoordinateForm => ({
  constant: a.constant - b.constant,
  times: a.times.map((n, i) => n - (b.times[i] ?? 0)),
});
