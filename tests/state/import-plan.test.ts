import { describe, expect, test } from 'vitest';
import { workbookFile } from '../../shared/workbook';
import { workbookOf } from '../../shared/write-workbook';
import { planImport } from '../../src/state/intents/import-plan';
import { REFERENCES } from '../../src/state/intents/references';
import { fileOf } from '../../src/state/keeping/export-file';
import { type Shelf, shelfOf, withRow } from '../../src/state/shelf';
import { recordFault } from '../setup/fault-record';
import { eventRow, paperRow, recipeRow, supplyRow, toolRow } from '../storage/sample-rows';

const liner = {
  id: 'l',
  kind: 'liner' as const,
  name: 'Liner',
  widthMm: 80,
  heightMm: 150,
  perBox: 1,
  grain: 'free' as const,
  paperId: 'thin',
};
/** An event of two recipes on two papers, with tape; beside it things that have nothing to do with it. */
const SHELF: Shelf = shelfOf({
  recipes: [
    recipeRow('tray', { paperId: 'card', dressings: [{ id: 'd', name: 'Plain', pieces: [liner] }] }),
    recipeRow('pillow'),
    recipeRow('other', { paperId: 'gold' }),
  ],
  events: [
    eventRow('wedding', {
      tapeId: 'tape',
      lines: [
        { id: '1', recipeId: 'tray', dressingId: 'd', paperId: null, count: 40 },
        { id: '2', recipeId: 'pillow', dressingId: null, paperId: 'blue', count: 12 },
      ],
    }),
    eventRow('lonely', { lines: [{ id: '1', recipeId: 'gone', dressingId: null, paperId: null, count: 3 }] }),
  ],
  papers: ['card', 'thin', 'blue', 'gold'].map((id) => paperRow(id)),
  supplies: [supplyRow('tape')],
  tools: [toolRow('trimmer')],
  photos: [],
});
const EMPTY = shelfOf({ recipes: [], events: [], papers: [], supplies: [], tools: [], photos: [] });
const counter = () => {
  let count = 0;
  return () => `new-${++count}`;
};
const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id).sort();
const need = <Value>(value: Value | null | undefined): Value => {
  if (value == null) throw new Error('nothing there');
  return value;
};
const readIn = (shelf: Shelf, plan: ReturnType<typeof planImport>): Shelf => {
  const coming = plan.rows.filter(({ fate }) => fate !== 'same');
  return coming.reduce((next, { table, row }) => withRow(next, { table, id: row.id }, row), shelf);
};

describe('a file of one thing', () => {
  test('holds an event with its recipes, their papers, and its tape, and nothing else', () => {
    const file = need(fileOf(SHELF, { kind: 'event', id: 'wedding' }));
    expect(ids(file.events)).toEqual(['wedding']);
    expect(ids(file.recipes)).toEqual(['pillow', 'tray']);
    expect(ids(file.papers)).toEqual(['blue', 'card', 'thin']);
    expect(ids(file.supplies)).toEqual(['tape']);
    expect(file.tools).toEqual([]);
  });

  test('holds a recipe with the papers of its box and its dressings', () => {
    const file = need(fileOf(SHELF, { kind: 'recipe', id: 'tray' }));
    expect([ids(file.recipes), ids(file.papers), file.events]).toEqual([['tray'], ['card', 'thin'], []]);
  });

  test('is written also where something it needs is gone, and not for what is not there', () => {
    expect(need(fileOf(SHELF, { kind: 'event', id: 'lonely' })).recipes).toEqual([]);
    expect(fileOf(SHELF, { kind: 'recipe', id: 'nowhere' })).toBeNull();
  });

  test('of everything holds everything', () => {
    const file = need(fileOf(SHELF, { kind: 'everything' }));
    expect(
      [file.recipes, file.events, file.papers, file.supplies, file.tools].map(({ length }) => length),
    ).toEqual([3, 2, 4, 1, 1]);
  });
});

describe('reading a file in', () => {
  const file = need(fileOf(SHELF, { kind: 'everything' }));

  test('onto an empty shelf brings everything under its own id', () => {
    const plan = planImport(file, EMPTY, counter());
    expect(plan.counts).toEqual({ new: 11, same: 0, differs: 0 });
    expect(readIn(EMPTY, plan)).toEqual({
      ...SHELF,
      recipes: new Map([...SHELF.recipes].map(([id, row]) => [id, { ...row, rev: 0 }])),
    });
  });

  test('twice brings nothing the second time', () => {
    expect(planImport(file, SHELF, counter()).counts).toEqual({ new: 0, same: 11, differs: 0 });
  });

  test('never touches what is here: another state comes in beside it, and what came with it points there', () => {
    const here = shelfOf({
      ...EMPTY_ROWS,
      recipes: [recipeRow('tray', { name: 'My own tray' })],
      papers: [paperRow('card', { onHandSheets: 99 })],
    });
    const plan = planImport(need(fileOf(SHELF, { kind: 'event', id: 'wedding' })), here, counter());
    expect(plan.counts).toEqual({ new: 5, same: 0, differs: 2 });
    const shelf = readIn(here, plan);
    expect(shelf.recipes.get('tray')?.name).toBe('My own tray');
    expect(shelf.papers.get('card')?.onHandSheets).toBe(99);
    const [line] = need(shelf.events.get('wedding')).lines;
    const tray = need(shelf.recipes.get(need(line).recipeId));
    expect(tray.name).toBe('Recipe tray');
    expect(shelf.papers.get(need(tray.paperId))?.onHandSheets).toBe(4);
  });

  // 2026-01-10 is the day on which the sample rows were changed.
  test('of an older day: what comes in beside a thing of the same name says of which day it is', (context) => {
    const changed = shelfOf({
      ...EMPTY_ROWS,
      recipes: [recipeRow('tray', { notes: 'newer' })],
      events: [eventRow('wedding', { spares: { percent: 20, atLeast: 0 } })],
      papers: [paperRow('card', { onHandSheets: 99 })],
      supplies: [supplyRow('tape', { onHandRolls: 7 })],
      tools: [toolRow('trimmer', { name: 'My trimmer' })],
    });
    const older = workbookOf('everything', {
      recipes: [recipeRow('tray', { name: `Tray ${'x'.repeat(195)}`.slice(0, 200) })],
      events: [eventRow('wedding')],
      papers: [paperRow('card')],
      supplies: [supplyRow('tape')],
      tools: [toolRow('trimmer')],
    });
    const here: Shelf = {
      ...changed,
      recipes: new Map([
        ['tray', { ...need(changed.recipes.get('tray')), name: need(older.recipes[0]).name }],
      ]),
    };
    const plan = planImport(older, here, counter());
    const shelf = readIn(here, plan);
    let alike = 0;
    for (const table of ['recipes', 'events', 'papers', 'supplies', 'tools'] as const) {
      const all = [...shelf[table].values()].map(({ name }) => name);
      if (all.length !== 2 || new Set(all).size !== 2 || all.some((name) => name.length > 200)) alike++;
    }
    recordFault(context, {
      fault: 'an older backup: two things of one name',
      tries: 5,
      lost: alike,
      goal: 0,
    });
    expect(need([...shelf.papers.values()][1]).name).toBe('Paper card (2026-01-10)');
    // Another name is told apart already.
    expect([...shelf.tools.values()].map(({ name }) => name)).toEqual(['My trimmer', 'Tool trimmer']);
    expect(planImport(older, shelf, counter()).counts).toEqual({ new: 0, same: 5, differs: 0 });
  });

  test('again after that finds its own copies and brings nothing', () => {
    const here = shelfOf({ ...EMPTY_ROWS, papers: [paperRow('card', { onHandSheets: 99 })] });
    const once = readIn(here, planImport(file, here, counter()));
    expect(planImport(file, once, counter()).counts).toEqual({ new: 0, same: 11, differs: 0 });
  });

  test('a recipe that is here, but on another paper of the same id, comes in beside it', () => {
    const here = shelfOf({
      ...EMPTY_ROWS,
      recipes: [need(SHELF.recipes.get('other'))],
      papers: [paperRow('gold', { gsm: 90 })],
    });
    const plan = planImport(need(fileOf(SHELF, { kind: 'recipe', id: 'other' })), here, counter());
    expect(plan.counts).toEqual({ new: 0, same: 0, differs: 2 });
  });

  test('goes around an id that a set-aside row holds', () => {
    const plan = planImport(
      workbookOf('recipe', { recipes: [recipeRow('bad')] }),
      EMPTY,
      counter(),
      new Set(['recipes/bad']),
    );
    expect(plan.rows.map(({ fate, row }) => [fate, row.id])).toEqual([['new', 'new-1']]);
  });
});

const EMPTY_ROWS = { recipes: [], events: [], papers: [], supplies: [], tools: [], photos: [] };

describe('every field of the format that holds an id', () => {
  /** Ids that are not of another row: of a style in the app, of a dressing within the recipe itself, of a line within the event. */
  const OF_NO_ROW = ['styleId', 'dressingId', 'lineId'];

  interface Def {
    readonly shape?: Record<string, { def: Def }>;
    readonly element?: { def: Def };
    readonly innerType?: { def: Def };
    readonly valueType?: { def: Def };
    readonly options?: readonly { def: Def }[];
  }
  const fieldsOf = (def: Def): string[] => [
    ...Object.entries(def.shape ?? {}).flatMap(([name, { def: inner }]) => [name, ...fieldsOf(inner)]),
    ...[def.element, def.innerType, def.valueType, ...(def.options ?? [])].flatMap((inner) =>
      inner ? fieldsOf(inner.def) : [],
    ),
  ];

  test('is known as a reference', () => {
    const found = [...new Set(fieldsOf(workbookFile.def as unknown as Def))].filter((name) =>
      /Ids?$/.test(name),
    );
    expect(found).toContain('recipeId');
    expect(found.filter((name) => !OF_NO_ROW.includes(name)).sort()).toEqual(Object.keys(REFERENCES).sort());
  });
});
