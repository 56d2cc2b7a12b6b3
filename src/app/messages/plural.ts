// Made when first needed: the tables behind them cost a slow processor a tenth of a second.
let rules: Intl.PluralRules | null = null;
let whole: Intl.NumberFormat | null = null;

/** `plural(3, 'sheet')` is `3 sheets`. */
export function plural(count: number, one: string, many = `${one}s`): string {
  rules ??= new Intl.PluralRules('en');
  whole ??= new Intl.NumberFormat('en');
  return `${whole.format(count)} ${rules.select(count) === 'one' ? one : many}`;
}
