/**
 * What any language says where English says `Text`: the same names and the same values told, in words of its own. English is written out in
 * `english/`, and its types are the types of every catalogue.
 */
export type Wording<Text> = Text extends string
  ? string
  : Text extends (...told: infer Told) => unknown
    ? (...told: Told) => string
    : { readonly [Key in keyof Text]: Wording<Text[Key]> };
