/** What the core and the tables say, in another language: their own English is the key. One entry a plural form where a number is named. */
export type Spoken = Readonly<
  Record<
    string,
    string | (Readonly<Partial<Record<Intl.LDMLPluralRule, string>>> & { readonly other: string })
  >
>;

export type Say = (text: string, count?: number) => string;

/** Words and templates of the core in the language of a catalogue; English where it has none. */
export const sayIn =
  ({ spoken, locale }: { readonly spoken: Spoken; readonly locale: string }): Say =>
  (text, count = 0) => {
    const said = spoken[text] ?? text;
    return typeof said === 'string' ? said : (said[new Intl.PluralRules(locale).select(count)] ?? said.other);
  };
