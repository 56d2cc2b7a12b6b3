import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { WorkbookFile } from '../../shared/workbook';
import { holding, newestFirst, textOfEvent, textOfRecipe } from '../../src/screens/shelf/find-on-shelf';

const demo = JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')) as WorkbookFile;
const say = (text: string) => text;
const found = (typed: string) =>
  holding(
    demo.recipes,
    demo.recipes.map((recipe) => textOfRecipe(recipe, say)),
    typed,
  ).map(({ name }) => name);

test('a box is found by its name, its style, what goes in and what its dressing is called; words in any order', () => {
  const [first] = demo.recipes;
  const dressed = demo.recipes.find(({ dressings }) => dressings.length > 0)!;
  expect(found('')).toHaveLength(demo.recipes.length);
  expect(found('box seed')).toContain('Seed box');
  expect(found('OPEN-TOP')).toContain('Seed box');
  expect(found(dressed.dressings[0]!.name)).toContain(dressed.name);
  const item = demo.recipes.flatMap(({ contents }) => contents?.items ?? [])[0];
  if (item) expect(found(item.name).length).toBeGreaterThan(0);
  expect(found(`${first!.name} nowhere`)).toEqual([]);
});

test('accents and case do not count', () => {
  const texts = [textOfRecipe({ ...demo.recipes[0]!, name: 'Zoë & Łukasz — Ελένη' }, say)];
  for (const typed of ['zoe', 'ZOË', 'ελενη']) expect(holding([1], texts, typed)).toEqual([1]);
});

test('an event is found by its date as shown and by its boxes', () => {
  const event = demo.events[0]!;
  const boxes = new Map(demo.recipes.map((recipe) => [recipe.id, recipe]));
  const text = textOfEvent(event, boxes, () => 'March 20, 2027');
  for (const typed of ['march 2027', event.name, boxes.get(event.lines[0]!.recipeId)!.name])
    expect(holding([event], [text], typed)).toEqual([event]);
});

test('what was changed last stands first; of the same moment, by id', () => {
  const rows = [
    { id: 'b', changedAt: '2026-01-02T00:00:00.000Z' },
    { id: 'c', changedAt: '2026-01-03T00:00:00.000Z' },
    { id: 'a', changedAt: '2026-01-02T00:00:00.000Z' },
  ];
  expect(newestFirst(new Map(rows.map((row) => [row.id, row]))).map(({ id }) => id)).toEqual(['c', 'a', 'b']);
});
