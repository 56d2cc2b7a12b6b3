import { expect, test } from 'vitest';
import { type Around, commandsFrom } from '../../src/app/commands';
import { findCommands } from '../../src/app/find-commands';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { english } from '../../src/ui/words/english';
import { commandMessages as own } from '../../src/ui/words/english/commands';
import { keyMessages } from '../../src/ui/words/english/keys';
import { openTab, World } from '../state/open-tab';

const asked: string[] = [];
const around = (store: WorkbookStore, pathname = '/'): Around => ({
  state: store.getState(),
  pathname,
  go: (address) => void asked.push(address),
  prints: [
    {
      name: 'benchCard',
      recipe: null,
      make: () => Promise.resolve({ name: 'card', ending: 'pdf', content: new Blob() }),
      need: null,
    },
    { name: 'shoppingList', recipe: null, make: null, need: { what: 'paper', page: 'event' } },
  ],
  print: async (make) => void asked.push((await make('letter')).name),
  saveFile: ({ kind }) => void asked.push(`save ${kind}`),
  newStock: () => ({ ok: true, id: 'made' }),
  ask: (what) => void asked.push(what),
  words: english,
  own,
  keyWords: keyMessages,
});

async function onShelf() {
  const store = await openTab(new World());
  const { createRecipe, createEvent } = store.getState();
  const recipe = createRecipe({ name: 'Bean pillow', styleId: 'pillow-pack' });
  const event = createEvent({ name: 'Seed swap' });
  return { store, recipe: recipe.ok ? recipe.id : '', event: event.ok ? event.id : '' };
}

test.each([
  ['backup', 'Save everything to a file'],
  ['print', 'Print the step card'],
  ['card', 'Print the step card'],
  ['unit', 'Measure in millimeters'],
  ['theme', 'Theme: dark'],
  ['dark', 'Theme: dark'],
  ['sheet', 'Sheets'],
  ['paper', 'New paper'],
  ['glue', 'New tape'],
  ['price', 'Shopping'],
  ['restore', 'Backup'],
  ['glossary', 'Help'],
  ['shortcuts', 'All keys'],
  ['duplicate', 'Copy Seed swap'],
  ['party', 'New event'],
  ['bean', 'Bean pillow'],
  ['help', 'Help'],
  ['settings', 'Measure in millimeters'],
  ['preferences', 'Theme: dark'],
  ['schedule', 'Count'],
  ['calendar', 'Count'],
  ['deadline', 'Count'],
  ['guests', 'Count'],
  ['spares', 'Count'],
  ['svg', 'Size'],
  ['dxf', 'Size'],
  ['net', 'Size'],
  ['lid', 'Size'],
  ['thickness', 'Size'],
  ['candle', 'New box'],
  ['soap', 'New box'],
  ['envelope', 'New box'],
  ['cone', 'New box'],
  ['cornet', 'New box'],
  ['wallet', 'New box'],
  ['pillow', 'New box'],
  ['pyramid', 'New box'],
  ['qr', 'Share'],
  ['phone', 'Share'],
  ['tutorial', 'Share'],
  ['photo', 'Share'],
  ['kerf', 'Sheets'],
  ['offcut', 'Sheets'],
  ['waste', 'Sheets'],
  ['layout', 'Sheets'],
  ['yield', 'Sheets'],
  ['inventory', 'New paper'],
  ['cardstock', 'New paper'],
  ['ribbon', 'New tape'],
  ['trimmer', 'New tool'],
  ['scoring board', 'New tool'],
  ['laser', 'New tool'],
  ['contents', 'Inside'],
  ['clearance', 'Inside'],
  ['3d', 'Fold'],
  ['preview', 'Fold'],
  ['ruler', 'Easy sizes'],
  ['nesting', 'Easy sizes'],
  ['bow', 'Decorate'],
  ['tag', 'Decorate'],
  ['liner', 'Decorate'],
  ['budget', 'Shopping'],
  ['tax', 'Shopping'],
  ['cost', 'Shopping'],
  ['instructions', 'Make'],
  ['timer', 'Make'],
  ['batch', 'Make'],
  ['trash', 'Backup'],
  ['recover', 'Backup'],
  ['import', 'Backup'],
  ['erase', 'Backup'],
  ['legend', 'Help'],
  ['faq', 'Help'],
  ['metric', 'Measure in millimeters'],
  ['cm', 'Measure in millimeters'],
  ['wedding', 'New event'],
  ['home', 'Go to the shelf'],
  ['clone', 'Copy Seed swap'],
  ['export', 'Save everything to a file'],
])('a maker who types “%s” finds “%s” among the first five', async (typed, says) => {
  const { store, event } = await onShelf();
  const found = findCommands(commandsFrom(around(store, `/event/${event}/event`)), typed, own.also);
  expect(found.slice(0, 5).map(({ command }) => command.says.toLowerCase())).toContain(says.toLowerCase());
});

test('what is found by its own words stands before what is found by another, which is named', async () => {
  const { store, event } = await onShelf();
  const commands = commandsFrom(around(store, `/event/${event}/event`));
  const found = findCommands(commands, 'paper', own.also);
  const lastOwn = found.findLastIndex(({ by }) => by.length === 0);
  expect(found.findIndex(({ by }) => by.length > 0)).toBe(lastOwn + 1);
  expect(findCommands(commands, 'save file back-up', own.also)[0]).toMatchObject({
    command: { id: 'backup' },
    by: ['back-up'],
  });
  expect(findCommands(commands, 'paper quagmire', own.also)).toEqual([]);
});

test('undo and redo are listed while there is something to undo and redo', async () => {
  const store = await openTab(new World());
  const listed = () =>
    commandsFrom(around(store)).flatMap(({ id, says }) => (/^(un|re)do$/.test(id) ? says : []));
  expect(listed()).toEqual([]);
  store.getState().createRecipe({ name: 'Bean pillow', styleId: 'pillow-pack' });
  expect(listed()).toEqual(['Undo: New box']);
  store.getState().undo();
  expect(listed()).toEqual(['Redo: New box']);
});

test('a document that waits for something says for what, and leads there', async () => {
  const { store, event } = await onShelf();
  const waits = commandsFrom(around(store, `/event/${event}/bench`)).find(
    ({ id }) => id === 'print shoppingList ',
  );
  expect(waits?.says).toBe('Print the shopping list (choose a paper first)');
  asked.length = 0;
  waits?.run();
  expect(asked).toEqual([`/event/${event}/event`]);
});

test('acts do what they say', async () => {
  const { store, recipe } = await onShelf();
  const run = (id: string, pathname = '/') =>
    commandsFrom(around(store, pathname))
      .find((command) => command.id === id)!
      .run();
  asked.length = 0;
  run('backup');
  run('new papers');
  await run('print benchCard ', `/recipe/${recipe}/box`);
  run('copy', `/recipe/${recipe}/box`);
  expect(asked.slice(0, 3)).toEqual(['save everything', '/stock/papers/made', 'card']);
  expect(asked[3]).toMatch(/^\/recipe\/.+\/box$/);
  expect(store.getState().rows.recipes.size).toBe(2);
  run('unit');
  expect(store.getState().settings.unit).toBe('mm');
  run('theme dark');
  expect(store.getState().settings.theme).toBe('dark');
});

test('every command has an id of its own', async () => {
  const { store, event } = await onShelf();
  const ids = commandsFrom(around(store, `/event/${event}/event`)).map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});
