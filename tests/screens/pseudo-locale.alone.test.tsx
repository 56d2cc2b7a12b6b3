import { readFileSync } from 'node:fs';
import { screen } from '@testing-library/react';
import { expect, test, vi } from 'vitest';

/** Every text of a catalogue in brackets that no other text has; numbers, keys and the locale stay. What the core says is put in by its own text. */
const { bracketed } = vi.hoisted(() => {
  const bracketed = <Value,>(value: Value, name = ''): Value => {
    if (name === 'locale') return value;
    if (name === 'spoken') return inCore as Value;
    if (typeof value === 'string') return `⟦${value}⟧` as Value;
    if (typeof value === 'function')
      return ((...given: unknown[]) =>
        bracketed((value as (...all: unknown[]) => unknown)(...given))) as Value;
    if (Array.isArray(value)) return value.map((each) => bracketed(each)) as Value;
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, each]) => [key, bracketed(each, key)]),
    ) as Value;
  };
  const inCore: Record<string, string> = {};
  return { bracketed, inCore };
});
vi.mock('../../src/ui/words/english', async (original) => bracketed(await original<object>()));
vi.mock('../../src/ui/words/english/making', async (original) => bracketed(await original<object>()));
vi.mock('../../src/ui/words/english/commands', async (original) => bracketed(await original<object>()));
vi.mock('../../src/ui/words/english/keys', async (original) => bracketed(await original<object>()));
vi.mock('../../src/ui/words/english/help', async (original) => bracketed(await original<object>()));
vi.mock('../../src/ui/words/english/keeping', async (original) => bracketed(await original<object>()));
vi.mock('../../src/ui/words/english/picking', async (original) => bracketed(await original<object>()));

import type { WorkbookFile } from '../../shared/workbook';
import { setFractions } from '../../src/core/draw/strokes/set-fractions';
import { USUAL_FINEST } from '../../src/core/units';
import { benchOfRecipe } from '../../src/state/results/bench-result';
import { english } from '../../src/ui/words/english';
import { styleWords, writtenTexts } from '../house/own-words';
import { openApp } from './open-app';

Object.assign(
  english.spoken,
  Object.fromEntries([...writtenTexts(), ...styleWords()].map((text) => [text, inBrackets(text)])),
);

/** A template with its fixed words in brackets and its facts outside them: what is pasted in must be in brackets of its own. */
function inBrackets(template: string): string {
  return template.replace(/[^{}]+(?![^{]*\})/g, '⟦$&⟧');
}

/** What the maker of the demo wrote herself, and what one grammar makes for all languages: sentences of the bench card and names of parts. Longest first. */
const demo = JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')) as WorkbookFile;
const cards = demo.recipes.map((recipe) => ({
  recipe,
  cards: benchOfRecipe(recipe, demo.tools[0], { unit: 'in', finest: USUAL_FINEST.in })?.cards ?? [],
}));
const hers = [
  ...writtenIn(demo),
  ...cards.flatMap(({ recipe, cards }) => cards.map(({ piece }) => `${recipe.name}: ${piece.label}`)),
  ...cards.flatMap(({ cards }) =>
    cards.flatMap(({ steps }) =>
      steps.flatMap(({ headline, details }) => [headline, ...details].map(setFractions)),
    ),
  ),
].sort((one, other) => other.length - one.length);

function writtenIn(value: unknown): string[] {
  if (typeof value === 'string') return /\p{L}{3}/u.test(value) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) =>
    typeof each === 'string' && !/^(name|notes|says|credits)$/.test(key) ? [] : writtenIn(each),
  );
}

/** The runs of words of a text that stand in no brackets, lengths and units left out. */
function outside(text: string): string[] {
  let depth = 0;
  const bare = Array.from(text, (letter) => {
    if (letter === '⟦') depth++;
    if (letter === '⟧') depth--;
    return depth > 0 || letter === '⟧' ? '\n' : letter;
  });
  return bare
    .join('')
    .replace(/[\d⁄½¼¾⅛⅜⅝⅞⁰-₉¹²³]+\s*(in|mm|min|h|s|g|%)\b/gu, '\n')
    .split(/[^\p{L}’' -]+/u)
    .map((run) => run.trim())
    .filter((run) => /\p{L}{3,}/u.test(run) && run !== demo.events[0]?.currency);
}

const HEARD = ['aria-label', 'title', 'alt', 'placeholder', 'aria-valuetext'];

/** Everything on the page that is read or heard, is not hers, and stands in no brackets. Words in drawings are left out, and what is printed on keys. */
function hardCoded(): string[] {
  const said = new Set<string>();
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode())
    if (!node.parentElement?.closest('svg, kbd')) said.add(node.textContent ?? '');
  for (const element of document.body.querySelectorAll(HEARD.map((name) => `[${name}]`).join()))
    if (!element.closest('svg')) for (const name of HEARD) said.add(element.getAttribute(name) ?? '');
  const suspect = [...said].filter((text) => outside(text).length > 0);
  return [
    ...new Set(
      suspect.flatMap((text) => outside(hers.reduce((rest, own) => rest.replaceAll(own, '\n'), text))),
    ),
  ];
}

const event = '/event/seed-swap-supper';

test.each([
  ['/', /⟦Open-top box/],
  ['/new', /⟦Wallet|⟦Book-style wallet/],
  ['/keeping', /⟦Erase everything/],
  ['/help', /⟦Burnish/],
  ['/stock/papers/oat-letter', /⟦Grain/],
  [`${event}/contents`, /⟦Needs /],
  [`${event}/box`, /⟦Thumb notch/],
  [`${event}/fold`, /⟦Words of this page/],
  [`${event}/marks`, /⟦½ in marks/],
  [`${event}/dressing`, /⟦Joints/],
  [`${event}/event`, /⟦to make/],
  [`${event}/sheets`, /⟦This is the fewest/],
  [`${event}/shopping`, /⟦Total/],
  [`${event}/bench`, /⟦Yes, it matches/],
  ['/recipe/seed-box/bench', /⟦Next/],
  [`${event}/handout`, /⟦You need|⟦Words of this page/],
])('no text of its own stands on %s', async (address, there) => {
  await openApp(address);
  await screen.findAllByText(there);
  expect(hardCoded()).toEqual([]);
});

test('a text that stands in a page is seen, and one that is only heard, and a word of ours pasted into a sentence', () => {
  document.body.append(
    Object.assign(document.createElement('p'), {
      textContent: `⟦Glue the ⟧tab⟦ now.⟧ Quite unheard of, Seed box`,
      title: 'Nowhere to be read',
    }),
  );
  expect(hardCoded()).toEqual(['tab', 'Quite unheard of', 'Nowhere to be read']);
  document.body.lastElementChild?.remove();
});
