import { printMoney } from '../../core/plan/buying/money';
import type { Wording } from '../../core/units/reason';
import { lengthWords, useRuler } from '../fields/measure';
import { useSay, useWords } from '../words';

/** How sentences of the core are said to this maker: their language, their marks, their money. */
export function useWording(currency = 'USD'): Wording {
  const { locale } = useWords();
  const ruler = useRuler();
  const say = useSay();
  return {
    say,
    length: (length) => lengthWords(length, ruler),
    money: (minor) => printMoney(minor, currency, locale),
    count: (count) => new Intl.NumberFormat(locale).format(count),
    list: (said) => new Intl.ListFormat(locale).format(said),
  };
}
