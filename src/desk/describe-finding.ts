import type { Finding } from '../core/checks';
import { lengthWords } from '../core/draw/strokes/length-text';
import { type Ruler, toMm } from '../core/units';
import { type Reason, sayReason } from '../core/units/reason';

/** A finding with its sentences filled in for this ruler, and the lengths they name in millimeters. */
export function describeFinding({ facts, fix, says, remedy, ...finding }: Finding, ruler: Ruler) {
  const fill = (template: string) =>
    sayReason({ says: template, facts }, { length: (length) => lengthWords(length, ruler), money: String });
  return {
    ...finding,
    says: fill(says),
    remedy: fill(remedy),
    factsMm: factsMm(facts),
    ...(fix ? { fix: { symbol: fix.symbol, valueMm: toMm(fix.value) } } : {}),
  };
}

/** The lengths a sentence names. */
export const factsMm = (facts: Reason['facts']): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(facts).flatMap(([name, fact]) => (typeof fact === 'number' ? [[name, toMm(fact)]] : [])),
  );
