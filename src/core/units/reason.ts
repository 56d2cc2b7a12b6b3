import type { Ticks } from './ticks';

/**
 * Something a sentence names. A bare number is a length, a bare string is words of ours, which are said in the reader's language; `text` is
 * the maker's own and stays as they wrote it. A sentence may stand in another; several facts are listed.
 */
export type Fact =
  | Ticks
  | string
  | { readonly count: number }
  | { readonly length: Ticks }
  | { readonly minor: number }
  | { readonly text: string }
  | Reason
  | readonly Fact[];

/** One line of working, as data: `{name}` in `says` stands for a fact, and is printed in the reader's own units and money. */
export interface Reason {
  readonly says: string;
  readonly facts: Readonly<Record<string, Fact>>;
}

/** How the reader writes lengths and money, and what they speak. */
export interface Wording {
  readonly length: (length: Ticks) => string;
  readonly money: (minor: number) => string;
  readonly count?: (count: number) => string;
  /** A template in the reader's language; `count` is the first number it names, for plurals. English where it is left out. */
  readonly say?: (template: string, count?: number) => string;
  readonly list?: (said: readonly string[]) => string;
}

/** A sentence of ours in words: the one place where facts are filled in. A name without a fact is left as it stands. */
export function sayReason({ says, facts }: Reason, wording: Wording): string {
  const counted = Object.values(facts).find((fact) => typeof fact === 'object' && 'count' in fact);
  const { say = (template: string) => template } = wording;
  return say(says, (counted as { readonly count: number } | undefined)?.count).replace(
    /\{(\w+)\}/g,
    (name, key: string) => {
      const fact = facts[key];
      return fact === undefined ? name : sayFact(fact, wording);
    },
  );
}

function sayFact(fact: Fact, wording: Wording): string {
  if (typeof fact === 'number') return wording.length(fact);
  if (typeof fact === 'string') return wording.say?.(fact) ?? fact;
  if (isList(fact)) return (wording.list ?? inEnglish)(fact.map((each) => sayFact(each, wording)));
  if ('says' in fact) return sayReason(fact, wording);
  if ('length' in fact) return wording.length(fact.length);
  if ('minor' in fact) return wording.money(fact.minor);
  if ('text' in fact) return fact.text;
  return wording.count?.(fact.count) ?? `${fact.count}`;
}

const isList = (fact: Fact): fact is readonly Fact[] => Array.isArray(fact);
const inEnglish = (said: readonly string[]): string => new Intl.ListFormat('en').format(said);

/** Facts added up: `{p0} + {p1} + {p2}`. */
export const addUp = (parts: readonly Fact[]): Reason => ({
  says: parts.map((_, place) => `{p${place}}`).join(' + '),
  facts: Object.fromEntries(parts.map((part, place) => [`p${place}`, part])),
});

/** Bare numbers are counts here; lengths, money and what the maker wrote say so. */
export const reason = (says: string, facts: Readonly<Record<string, number | Fact>>): Reason => ({
  says,
  facts: Object.fromEntries(
    Object.entries(facts).map(([name, fact]) => [name, typeof fact === 'number' ? { count: fact } : fact]),
  ),
});
