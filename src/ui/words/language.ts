import type { PageWords } from '.';
import type { DraftingWords } from './drafting-words';
import type { FrontDoorWords } from './front-door-words';
import type { HelpWords } from './help-words';
import type { KeepingWords } from './keeping-words';
import type { PickingWords } from './picking-words';

/** Every text of the app, by the page that fetches it. */
interface Catalogues {
  readonly pages: PageWords;
  readonly frontDoor: FrontDoorWords;
  readonly help: HelpWords;
  readonly keeping: KeepingWords;
  readonly picking: PickingWords;
  readonly drafting: DraftingWords;
}

/** Any part of some texts: a text that takes values, or a list, is given whole. */
type Part<Texts> = Texts extends ((...given: never[]) => unknown) | readonly unknown[] | string
  ? Texts
  : { readonly [Key in keyof Texts]?: Part<Texts[Key]> };

/** A second language says only what it says otherwise than the first. */
export type SecondLanguage = Part<Catalogues>;

let second: SecondLanguage = {};

/** The language spoken from here on; to be called before anything is drawn. */
export const speak = (language: SecondLanguage): void => {
  second = language;
};

/** The texts of a catalogue in the language that is spoken. */
export const inLanguage = <Texts extends object>(catalogue: keyof Catalogues, english: Texts): Texts =>
  laidOver(english, second[catalogue] as Part<Texts> | undefined);

function laidOver<Texts extends object>(texts: Texts, over: Part<Texts> | undefined): Texts {
  const all = { ...texts } as Record<string, unknown>;
  for (const [key, other] of Object.entries(over ?? {}) as [string, unknown][]) {
    const text = all[key];
    const inside = typeof text === 'object' && text !== null && !Array.isArray(text);
    all[key] = inside ? laidOver(text, other as object) : other;
  }
  return all as Texts;
}

/** Regions whose English is written as in Britain. Source: CLDR parent locales, `en-001`, from memory. */
const BRITISH = /^en-(GB|IE|AU|NZ|ZA|IN|MT|HK|SG)\b/i;
export const isBritish = (locale: string): boolean => BRITISH.test(locale);
