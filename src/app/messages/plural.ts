const rules = new Intl.PluralRules('en');
const whole = new Intl.NumberFormat('en');

/** `plural(3, 'sheet')` is `3 sheets`. */
export const plural = (count: number, one: string, many = `${one}s`): string =>
  `${whole.format(count)} ${rules.select(count) === 'one' ? one : many}`;
