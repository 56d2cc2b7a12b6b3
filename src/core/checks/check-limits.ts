import { evaluateForm, formOf } from '../styles/language/linear-form';
import type { BoxStyle, Chosen, ConstraintSpec, Len } from '../styles/language/types';
import { limitsFor, symbolsFor } from '../styles/shapes/limits-for';
import { roundToTick, type Ticks, ticks } from '../units/ticks';
import type { Finding } from './finding';

type Lengths = Readonly<Record<string, Ticks>>;

/** Every limit of a style that these values break, with the nearest legal value on the maker's marks. `values` and `chosen` as in `BoxNet`. */
export function checkLimits(style: BoxStyle, values: Lengths, mark: Ticks, chosen: Chosen = {}): Finding[] {
  return [
    ...symbolsFor(style, chosen).flatMap(([symbol]) => checkRange(style, symbol, values, mark)),
    ...limitsFor(style, chosen).flatMap((bound) => checkBound(style, bound, values, mark)),
  ];
}

function checkRange(style: BoxStyle, symbol: string, values: Lengths, mark: Ticks): Finding[] {
  const spec = style.symbols[symbol];
  const value = values[symbol];
  if (spec === undefined || value === undefined) return [];
  const [least, most] = [spec.min, spec.max].map((text) => evaluateForm(formOf(text), {}));
  if (least !== undefined && value < least) return [outOfRange('least', onMark(least, mark, 'up'))];
  if (most !== undefined && value > most) return [outOfRange('most', onMark(most, mark, 'down'))];
  return [];

  function outOfRange(bound: keyof typeof BEYOND, limit: Ticks): Finding {
    return {
      code: `size-beyond-${bound}`,
      severity: 'stop',
      where: symbol,
      facts: { size: spec?.label ?? symbol, value: value ?? limit, limit },
      ...BEYOND[bound],
      fix: { symbol, value: limit },
    };
  }
}

const BEYOND = {
  least: {
    says: '{size} {value} is too small for this style.',
    remedy: 'Make it at least {limit}.',
  },
  most: {
    says: '{size} {value} is too large for this style.',
    remedy: 'Make it at most {limit}.',
  },
} as const;

function checkBound(style: BoxStyle, bound: ConstraintSpec, values: Lengths, mark: Ticks): Finding[] {
  const lengthOf = (text: Len) => evaluateForm(formOf(text), values);
  const value = values[bound.symbol] ?? ticks(0);
  const least = bound.atLeast === undefined ? null : lengthOf(bound.atLeast);
  const most = bound.atMost === undefined ? null : lengthOf(bound.atMost);
  const broken = (least !== null && value < least) || (most !== null && value > most);
  if (!broken) return [];
  const limit = onMark(least ?? most ?? value, mark, least !== null ? 'up' : 'down');
  const facts: Record<string, Ticks> = { limit };
  for (const [, slot = ''] of `${bound.says} ${bound.remedy}`.matchAll(/\{(\w+)\}/g)) {
    const extra = bound.facts?.[slot];
    const known = extra === undefined ? values[slot] : lengthOf(extra);
    if (slot !== 'limit' && known !== undefined) facts[slot] = known;
  }
  const finding: Finding = {
    code: bound.code,
    severity: bound.severity,
    where: bound.symbol,
    facts,
    says: bound.says,
    remedy: bound.remedy,
  };
  const spec = style.symbols[bound.symbol];
  const legal = spec !== undefined && limit >= lengthOf(spec.min) && limit <= lengthOf(spec.max);
  return [legal ? { ...finding, fix: { symbol: bound.symbol, value: limit } } : finding];
}

/** The nearest mark on the legal side of a limit. */
const onMark = (limit: Ticks, mark: Ticks, way: 'up' | 'down'): Ticks =>
  roundToTick((way === 'up' ? Math.ceil(limit / mark) : Math.floor(limit / mark)) * mark);
