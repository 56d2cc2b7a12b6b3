import { defaultChoices } from '../styles/language/define';
import { evaluateForm, evaluateUp, formOf, type LinearForm } from '../styles/language/linear-form';
import type { BoxStyle, Chosen, Len, Values } from '../styles/language/types';
import { isOnMark, markAbove, markBelow, nearestMark, USUAL_FINEST } from '../units/marks';
import { inches, millimetres, roundToTick, TICKS_PER_MM, type Ticks, ticks, toMm } from '../units/ticks';

/** What a maker chose; a size left out takes the style's default. `mark`: the marks allowances are rounded up to, 1/16 in if left out. */
export interface Sizing {
  readonly sizes: Readonly<Record<string, Ticks>>;
  readonly caliperUm: number;
  readonly mark?: Ticks;
  readonly options?: Chosen;
}

/**
 * Sizes that a new box keeps from the start at an inch bench: those whose default saved boxes rely on, where a new one begins with another.
 * Those it has already stay. One that follows others is taken down to a `mark`.
 */
export function newSizes(
  style: BoxStyle,
  kept: Readonly<Record<string, Ticks>> = {},
  mark: Ticks = USUAL_FINEST.in,
): Readonly<Record<string, Ticks>> {
  const sizes: Record<string, Ticks> = { ...kept };
  for (const [name, { forNew, min }] of Object.entries(style.symbols)) {
    if (forNew === undefined || sizes[name] !== undefined) continue;
    const form = formOf(forNew);
    const length = evaluateForm(form, fillSizes(style, sizes));
    const isReadable = form.terms.length === 0 || isOnMark(length, USUAL_FINEST.in);
    sizes[name] = ticks(
      Math.max(evaluateForm(formOf(min), {}), isReadable ? length : markBelow(length, mark)),
    );
  }
  return sizes;
}

const BEGUN_NEW = new WeakMap<BoxStyle, BoxStyle>();

/** A style whose usual sizes are those that new boxes begin with, for a search that has no box yet. */
export function begunNew(style: BoxStyle): BoxStyle {
  const { symbols } = style;
  if (!Object.values(symbols).some(({ forNew }) => forNew !== undefined)) return style;
  const known = BEGUN_NEW.get(style);
  if (known) return known;
  const begun = {
    ...style,
    symbols: Object.fromEntries(
      Object.entries(symbols).map(([name, symbol]) => [
        name,
        { ...symbol, default: symbol.forNew ?? symbol.default },
      ]),
    ),
  };
  BEGUN_NEW.set(style, begun);
  return begun;
}

/** What of its options a new box keeps from the start. */
export const newOptions = ({ options = {} }: BoxStyle): Chosen =>
  Object.fromEntries(
    Object.entries(options).flatMap(([id, { forNew }]) => (forNew === undefined ? [] : [[id, forNew]])),
  );

/**
 * Sizes that a box begins with at a metric bench: the style's own defaults on whole centimeters, halves and millimeters, the coarser the
 * longer. A size that follows others is left to follow, unless it would fall between millimeters.
 */
export function metricSizes(style: BoxStyle): Readonly<Record<string, Ticks>> {
  const sizes: Record<string, Ticks> = {};
  for (const [name, { default: usual, forNew, min, max }] of Object.entries(style.symbols)) {
    const form = formOf(forNew ?? usual);
    const length = evaluateForm(form, fillSizes(style, sizes));
    const step = METRIC_STEPS.find(({ from }) => length >= from)!.step;
    const [least, most] = [min, max].map((limit) => evaluateForm(formOf(limit), {})) as [Ticks, Ticks];
    const round = nearestMark(length, step);
    if (forNew === undefined && form.terms.length > 0 && isOnMark(length, USUAL_FINEST.mm)) continue;
    sizes[name] =
      round < least
        ? markAbove(least, USUAL_FINEST.mm)
        : round > most
          ? markBelow(most, USUAL_FINEST.mm)
          : round;
  }
  return sizes;
}

/** How roundly a length is named. source: common practice, no source */
const METRIC_STEPS = [
  { from: millimetres(40), step: millimetres(10) },
  { from: millimetres(20), step: millimetres(5) },
  { from: ticks(0), step: millimetres(1) },
] as const;

/** The value of every name of a style: in ticks for the net, in millimeters for what is not linear. */
export interface NamedValues {
  readonly lengths: Readonly<Record<string, Ticks>>;
  readonly mm: Values;
  readonly anglesDeg: Readonly<Record<string, number>>;
}

/** A caliper in whole micrometers as ticks, rounded up: the one way thickness enters the flat net. */
export const caliperTicks = (caliperUm: number): Ticks => ticks(Math.ceil((caliperUm * TICKS_PER_MM) / 1000));

/** A style's sizes, every symbol filled in from its default. */
export function fillSizes(
  style: BoxStyle,
  sizes: Readonly<Record<string, Ticks>> = {},
): Record<string, Ticks> {
  const filled: Record<string, Ticks> = {};
  for (const [name, form] of formsOf(style).symbols) filled[name] = sizes[name] ?? evaluateForm(form, filled);
  return filled;
}

interface StyleForms {
  readonly symbols: readonly (readonly [string, LinearForm])[];
  readonly allowances: readonly (readonly [string, LinearForm])[];
  readonly lets: readonly (readonly [string, LinearForm])[];
}
const READ = new WeakMap<BoxStyle, StyleForms>();

/** Every form of a style, read once: a search names the values of one style thousands of times. */
function formsOf(style: BoxStyle): StyleForms {
  const known = READ.get(style);
  if (known) return known;
  const read = (texts: Readonly<Record<string, Len>> = {}) =>
    Object.entries(texts).map(([name, text]) => [name, formOf(text)] as const);
  const forms = {
    symbols: Object.entries(style.symbols).map(
      ([name, { default: usual }]) => [name, formOf(usual)] as const,
    ),
    allowances: read(style.allowances),
    lets: read(style.lets),
  };
  READ.set(style, forms);
  return forms;
}

/** Every name's value, each rounded once, in the order declared: symbols, caliper, allowances, sums, quantities, angles. */
export function nameValues(
  style: BoxStyle,
  { sizes, caliperUm, mark = inches(0, 1, 16), options = {} }: Sizing,
): NamedValues {
  const lengths: Record<string, Ticks> = { ...fillSizes(style, sizes), t: caliperTicks(caliperUm) };
  const forms = formsOf(style);
  for (const [name, form] of forms.allowances) lengths[name] = evaluateUp(form, lengths, mark);
  for (const [name, form] of forms.lets) lengths[name] = evaluateForm(form, lengths);
  const mm: Record<string, number> = {};
  for (const name in lengths) mm[name] = toMm(lengths[name] as Ticks);
  const chosen = { ...defaultChoices(style), ...options };
  for (const [name, { of, onMark }] of Object.entries(style.quantities ?? {})) {
    const exact = realOrNothing(of(mm, chosen));
    const length = onMark ? roundToTick(Math.ceil(millimetres(exact) / mark) * mark) : millimetres(exact);
    lengths[name] = length;
    mm[name] = onMark ? toMm(length) : exact;
  }
  const anglesDeg: Record<string, number> = {};
  for (const [name, { of }] of Object.entries(style.angles ?? {}))
    anglesDeg[name] = realOrNothing(of(mm, chosen));
  return { lengths, mm, anglesDeg };
}

/** Longer than any card. source: our choice, ten meters */
const BEYOND_ANY_CARD = 10_000; // mm

/** Sizes that break a style's limits may ask for the root of a negative or grow past all bounds; the limit's finding says so, the drawing shows nothing there. */
const realOrNothing = (value: number): number =>
  Number.isFinite(value) && Math.abs(value) < BEYOND_ANY_CARD ? value : 0;

/** A form's value among these lengths. */
export const lengthOf = (text: Len, values: NamedValues): Ticks => evaluateForm(formOf(text), values.lengths);
