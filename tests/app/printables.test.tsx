import { expect, test } from 'vitest';
import { type Printable, printablesOf } from '../../src/app/printables';
import { planEvent } from '../../src/core/plan';
import { rulerOf } from '../../src/state/results/ruler-of';
import { rowsOf } from '../../src/state/shelf';
import type { WorkbookStore } from '../../src/state/workbook-store';
import type { OpenWorkbook } from '../../src/ui/frame/open-workbook';
import { openEvent, PaperTray, workbookWithDemo } from '../screens/open-app';

function printsOf(store: WorkbookStore, change: Partial<OpenWorkbook> = {}) {
  const printer = new PaperTray();
  const open = { ...openEvent(store), ...change };
  const prints = printablesOf(open, { printer, tool: undefined, ruler: rulerOf(store.getState()) });
  return { prints, printer };
}
const needs = (prints: readonly Printable[]) =>
  Object.fromEntries(prints.flatMap(({ name, need }) => (need ? [[name, need.what]] : [])));

test('every document the printer knows is listed once, and each makes its own', async () => {
  const store = await workbookWithDemo();
  const { prints, printer } = printsOf(store);
  const own = prints.filter(({ recipe }) => recipe === null || recipe === prints.at(-1)?.recipe);
  for (const { make } of own) await make?.('letter');
  // A box of a style of ours has no file of its style; one that brings its own has one more document.
  const [recipe] = openEvent(store).recipes;
  const brought = printsOf(store, { event: null, recipes: [{ ...recipe!, ownStyle: '{}' }] });
  const more = brought.prints.filter(({ name }) => own.every((each) => each.name !== name));
  expect(more.map(({ name }) => name)).toEqual(['styleFile']);
  await more[0]?.make?.('letter');
  printer.asked.push(...brought.printer.asked);
  const made = [...new Set(printer.asked.map((what) => what.replace(/ on letter$/, '')))];
  // A nested sheet is asked for where a piece is chosen; labels need kits, names need guests. A season has several events, and its
  // own page.
  const elsewhere = ['asked', 'nestedSheet', 'kitLabels', 'lessonPlan', 'nameCards', 'tableList', 'season'];
  const all = Object.entries(printer).filter(([name]) => !elsewhere.includes(name));
  expect(made.length - 2).toBe(all.length); // the net is one of them, in three formats
  expect(needs(prints)).toEqual({
    nestedSheet: 'nest',
    kitLabels: 'kits',
    lessonPlan: 'kits',
    nameCards: 'guests',
    tableList: 'guests',
  });
});

test('what an event still needs stands at each of its documents: a count, then a paper, then a date', async () => {
  const store = await workbookWithDemo();
  const { rows } = store.getState();
  const event = [...rows.events.values()][0]!;
  const all = [
    'cuttingSheets',
    'nestedSheet',
    'shoppingList',
    'shoppingTable',
    'runSheet',
    'calendar',
    'kitLabels',
    'lessonPlan',
  ];
  const waiting = (what: string) => ({
    ...Object.fromEntries(all.map((name) => [name, what])),
    nameCards: 'guests',
    tableList: 'guests',
  });
  expect(needs(printsOf(store, { event: { ...event, lines: [] }, recipes: [] }).prints)).toEqual(
    waiting('count'),
  );
  expect(needs(printsOf(store, { plan: null }).prints)).toEqual(waiting('counting'));
  const bare = { ...rowsOf(rows), papers: [] };
  expect(needs(printsOf(store, { plan: planEvent(bare, event.id) }).prints)).toEqual(waiting('paper'));
});

test('a box that does not close has no steps to print', async () => {
  const store = await workbookWithDemo();
  const { rows } = store.getState();
  const recipe = [...rows.recipes.values()].find(({ name }) => name === 'Seed box')!;
  const unknown = { ...recipe, styleId: 'no-such-style' };
  expect(needs(printsOf(store, { recipes: [unknown] }).prints)).toMatchObject({
    benchCard: 'noSteps',
    template: 'pickStyle',
  });
});
