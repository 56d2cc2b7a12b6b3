import { readFileSync } from 'node:fs';
import { fireEvent, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { printJobs } from '../../src/app/print-jobs';
import { printablesOf } from '../../src/app/printables';
import { rulerOf } from '../../src/state/results/ruler-of';
import type { MadeFile } from '../../src/ui/frame/printer';
import { english } from '../../src/ui/words/english';
import { openApp, openEvent, workbookWithDemo } from '../screens/open-app';
import { recordFault } from '../setup/fault-record';

import '../../src/app/command-list';

// The page's own window opens no dialogs and scrolls nothing.
HTMLDialogElement.prototype.showModal = function show() {
  this.open = true;
};
HTMLDialogElement.prototype.close = function close() {
  this.open = false;
};
Element.prototype.scrollIntoView = () => undefined;

/** A letter that no face of ours has. */
const LETTER = '结';

beforeEach(() => {
  vi.stubGlobal('fetch', (address: URL) =>
    Promise.resolve(
      new Response(new Uint8Array(readFileSync(`public${address.pathname.replace(/^.*(?=\/fonts\/)/, '')}`))),
    ),
  );
});
afterEach(() => void vi.unstubAllGlobals());

/** The demo with this letter in every name, for kits and with guests, so that there is something of each document. */
async function workbookOfLetters() {
  const store = await workbookWithDemo();
  const { makeMine, edit } = store.getState();
  makeMine();
  const { events, recipes } = store.getState().rows;
  const [event] = events.values();
  const guest = { id: 'g', name: `Guest ${LETTER}`, table: `Table ${LETTER}`, needs: '', lineId: null };
  edit('events', event!.id, 'Name', (row) => ({
    ...row,
    name: `Supper ${LETTER}`,
    kits: 5,
    guests: [guest],
  }));
  for (const recipe of recipes.values())
    edit('recipes', recipe.id, 'Name', (row) => ({ ...row, name: `Box ${LETTER}` }));
  return store;
}

test('every document with a letter that cannot be printed names it before it is handed over', async (context) => {
  const store = await workbookOfLetters();
  const prints = printablesOf(openEvent(store), {
    printer: printJobs(store, english),
    tool: undefined,
    ruler: rulerOf(store.getState()),
  });
  const pdfs: [name: string, made: MadeFile][] = [];
  for (const { name, make } of prints) {
    const made = await make?.('letter');
    if (made?.ending === 'pdf') pdfs.push([name, made]);
  }
  const silent = pdfs.filter(([, { lost = [] }]) => !lost.includes(LETTER)).map(([name]) => name);
  recordFault(context, {
    fault: 'a name printed as “?” without a word',
    tries: pdfs.length,
    lost: silent.length,
    goal: 0,
  });
  expect(new Set(pdfs.map(([name]) => name))).toEqual(
    new Set([
      ...['benchCard', 'template', 'handoutPaper', 'decorateMap', 'cuttingSheets', 'shoppingList'],
      ...['runSheet', 'kitLabels', 'lessonPlan', 'nameCards', 'tableList'],
    ]),
  );
});

test('pressed in the search list, each document says it for itself, also where another said the same', async (context) => {
  const { printer } = await openApp('/recipe/seed-box/box');
  const handed: string[] = [];
  vi.spyOn(URL, 'createObjectURL').mockImplementation(() => {
    handed.push('file');
    return 'blob:made';
  });
  const made = (name: string) => async () => ({
    name,
    ending: 'csv' as const,
    content: new Blob(),
    lost: [LETTER],
  });
  Object.assign(printer, { template: made('template'), benchCard: made('step card') });
  const user = userEvent.setup();
  fireEvent.click(await screen.findByRole('button', { name: /^Search/, hidden: true }));
  const field = await screen.findByRole('combobox', { name: /^Find a page/, hidden: true });
  const take = async (words: string) => {
    await user.clear(field);
    await user.type(field, `${words}{Enter}`);
    return screen.findByText(new RegExp(`can’t show these letters: ${LETTER}`));
  };
  let silent = 0;
  for (const words of ['print a full-size template', 'print the step card']) {
    await take(words);
    if (handed.length > 0) silent++;
  }
  recordFault(context, { fault: 'a name printed as “?” without a word', tries: 2, lost: silent, goal: 0 });
  await user.type(field, '{Enter}');
  expect(handed).toHaveLength(1);
});
