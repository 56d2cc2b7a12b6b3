import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { screen } from '@testing-library/react';
import { expect, test, vi } from 'vitest';

/** Every text of a catalogue in brackets that no other text has; numbers, keys and the locale stay. */
const { bracketed } = vi.hoisted(() => {
  const bracketed = <Value,>(value: Value, name = ''): Value => {
    if (name === 'locale') return value;
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
  return { bracketed };
});
vi.mock('../../src/app/messages', async (original) => bracketed(await original<object>()));
vi.mock('../../src/app/messages/making', async (original) => bracketed(await original<object>()));

import { openApp } from './open-app';

/** What the core, the tables and the maker's own rows say, which no catalogue of the pages holds. */
const elsewhere = ['src/core', 'src/state', 'shared', 'demo-data']
  .flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && /\.(ts|json)$/.test(entry.name))
  .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'))
  .join('\n')
  .toLowerCase();

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
    .filter((run) => /\p{L}{3,}/u.test(run));
}

/** Everything on the page that is read or heard and comes from nowhere but the page's own code; drawings and their words are the core's. */
function hardCoded(): string[] {
  const said: string[] = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode())
    if (!node.parentElement?.closest('svg')) said.push(node.textContent ?? '');
  for (const element of document.body.querySelectorAll('*'))
    if (!element.closest('svg'))
      for (const name of ['aria-label', 'title', 'alt', 'placeholder', 'aria-valuetext'])
        said.push(element.getAttribute(name) ?? '');
  return [...new Set(said.flatMap(outside))].filter((run) => !elsewhere.includes(run.toLowerCase()));
}

test.each([
  ['/event/seed-swap-supper/event', /⟦to make/],
  ['/event/seed-swap-supper/sheets', /⟦No plan uses fewer/],
])('no text of its own stands on %s', async (address, there) => {
  await openApp(address);
  await screen.findByText(there);
  expect(hardCoded()).toEqual([]);
  // And one that does is seen, as is one that is only heard.
  document.body.append(
    Object.assign(document.createElement('p'), {
      textContent: 'Quite unheard of',
      title: 'Nowhere to be read',
    }),
  );
  expect(hardCoded()).toEqual(['Quite unheard of', 'Nowhere to be read']);
  document.body.lastElementChild?.remove();
});
