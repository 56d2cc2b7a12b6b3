import type { Ticks } from './ticks';

/** Something a sentence of arithmetic names. */
export type Fact =
  | { readonly count: number }
  | { readonly length: Ticks }
  | { readonly minor: number }
  | { readonly text: string };

/** One line of working, as data: `{name}` in `says` stands for a fact, and is printed in the reader's own units and money. */
export interface Reason {
  readonly says: string;
  readonly facts: Readonly<Record<string, Fact>>;
}

/** How the reader writes lengths and money. */
export interface Wording {
  readonly length: (length: Ticks) => string;
  readonly money: (minor: number) => string;
  readonly count?: (count: number) => string;
}

/** A line of working in words. A name without a fact is left as it stands. */
export const sayReason = ({ says, facts }: Reason, wording: Wording): string =>
  says.replace(/\{(\w+)\}/g, (name, key: string) => {
    const fact = facts[key];
    if (fact === undefined) return name;
    if ('length' in fact) return wording.length(fact.length);
    if ('minor' in fact) return wording.money(fact.minor);
    if ('text' in fact) return fact.text;
    return wording.count?.(fact.count) ?? `${fact.count}`;
  });

const asFact = (value: number | string | Fact): Fact => {
  if (typeof value === 'number') return { count: value };
  return typeof value === 'string' ? { text: value } : value;
};

/** Bare numbers are counts and bare strings are text; lengths and money say so. */
export const reason = (says: string, facts: Readonly<Record<string, number | string | Fact>>): Reason => ({
  says,
  facts: Object.fromEntries(Object.entries(facts).map(([name, value]) => [name, asFact(value)])),
});
