import type { Finding } from '../core/checks';
import { lengthWords } from '../core/draw/length-text';
import { type Ruler, toMm } from '../core/units';

/** A finding with its sentences filled in for this ruler, and the lengths they name in millimetres. */
export function describeFinding({ facts, fix, says, remedy, ...finding }: Finding, ruler: Ruler) {
  const fill = (sentence: string) =>
    sentence.replace(/\{(\w+)\}/g, (slot, name: string) => {
      const length = facts[name];
      return length === undefined ? slot : lengthWords(length, ruler);
    });
  return {
    ...finding,
    says: fill(says),
    remedy: fill(remedy),
    factsMm: Object.fromEntries(Object.entries(facts).map(([name, length]) => [name, toMm(length)])),
    ...(fix ? { fix: { symbol: fix.symbol, valueMm: toMm(fix.value) } } : {}),
  };
}
