/** Plain texts by name. */
export type Texts<Key extends string> = Readonly<Record<Key, string>>;
/** A text with a count in it, which each language puts in its own plural. */
export type Count = (count: number) => string;
/** A text with something named in it. */
export type Naming = (name: string) => string;
