import type { KeyAct, KeyPlace } from '../frame/keys';

/** Texts of the list of keys: the places where they are heard, and what each does there. */
export interface KeyWords {
  readonly why: string;
  readonly places: Readonly<Record<KeyPlace, string>>;
  readonly acts: { readonly [P in KeyPlace]: Readonly<Record<KeyAct<P>, string>> };
  /** As it is written on the keyboard: `Ctrl`, `Shift`, an arrow. */
  readonly faces: Readonly<Record<string, string>>;
}
