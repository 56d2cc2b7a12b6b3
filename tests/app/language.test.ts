import { afterAll, expect, test } from 'vitest';
import { settingsFor } from '../../src/app/first-settings';
import { british } from '../../src/ui/words/british';
import { helpMessages } from '../../src/ui/words/english/help';
import { keepingMessages } from '../../src/ui/words/english/keeping';
import { englishPages } from '../../src/ui/words/english/pages';
import { pickingMessages } from '../../src/ui/words/english/picking';
import { inLanguage, isBritish, speak } from '../../src/ui/words/language';
import { sayIn } from '../../src/ui/words/spoken';
import { writtenTexts } from '../house/own-words';

afterAll(() => speak({}));

const ENGLISH = {
  pages: englishPages,
  help: helpMessages,
  keeping: keepingMessages,
  picking: pickingMessages,
};
/** Spelled as in the United States only (Merriam-Webster, from memory). */
const AMERICAN = /\b(?:colors?|(?:milli|centi|micro)?meters?|fibers?|neighbors?|jewelry|trash)\b/i;

/** Every text of a catalogue by its place in it, values put in as `7`. */
function textsOf(value: unknown, at = ''): [string, string][] {
  if (typeof value === 'string') return [[at, value]];
  if (typeof value === 'function') {
    try {
      return textsOf((value as (...given: unknown[]) => unknown)('7', '7', '7', '7', '7'), at);
    } catch {
      return []; // wants lists or rows
    }
  }
  if (typeof value !== 'object' || value === null || /\.spoken$/.test(at)) return [];
  return Object.entries(value).flatMap(([key, each]) => textsOf(each, `${at}.${key}`));
}

test('in Britain what differs is said otherwise, and all else as before', () => {
  speak(british);
  const pages = inLanguage('pages', englishPages);
  expect(pages.stock.colour).toBe('Colour');
  expect(pages.stock.name).toBe(englishPages.stock.name);
  expect(pages.notices.deleted('Star')).toBe('Star is in the bin.');
  expect(pages.shelf.onDate('2027-03-20')).toBe('20 March 2027');
  expect(sayIn(pages)('Bag of candy, tied')).toBe('Bag of sweets, tied');
});

test('no text in British English is spelled as in the United States', () => {
  expect(textsOf(ENGLISH).filter(([, text]) => AMERICAN.test(text)).length).toBeGreaterThan(10);
  speak(british);
  const said = Object.entries(ENGLISH).flatMap(([name, texts]) =>
    textsOf(inLanguage(name as keyof typeof ENGLISH, texts as object), name),
  );
  expect(said.filter(([, text]) => AMERICAN.test(text))).toEqual([]);
});

test('every text it says otherwise is one of the first language, and differs from it', () => {
  const first = new Map(textsOf(ENGLISH));
  const over = textsOf(british);
  expect(over.length).toBeGreaterThan(25);
  // A list is given whole.
  const idle = over.filter(([at, text]) => !/\.\d+$/.test(at) && (first.get(at) ?? text) === text);
  expect(idle).toEqual([]);
  const core = writtenTexts();
  expect(Object.keys(british.pages?.spoken ?? {}).filter((text) => !core.has(text))).toEqual([]);
});

test.each([
  ['en-GB', true, 'mm', 'GBP'],
  ['en-US', false, 'in', 'USD'],
  ['en', false, 'in', 'USD'],
  ['de', false, 'mm', 'EUR'],
  ['fr-CH', false, 'mm', 'CHF'],
  ['en-AU', true, 'mm', 'AUD'],
  ['not a language', false, 'in', 'USD'],
])('with %s: British %s, lengths in %s, money in %s', (locale, is, unit, currency) => {
  expect(isBritish(locale)).toBe(is);
  expect(settingsFor(locale)).toMatchObject({ unit, currency });
});
