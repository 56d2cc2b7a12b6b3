import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareRows } from '../../src/state/keeping/field-changes';
import {
  dropStep,
  type History,
  moveStep,
  NO_HISTORY,
  nextStep,
  recordStep,
} from '../../src/state/keeping/history';
import { type RowChange, type Step, takeStep } from '../../src/state/keeping/steps';
import { EMPTY_SHELF, type Shelf, shelfOf } from '../../src/state/shelf';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';
import { paperRow, recipeRow } from '../storage/sample-rows';

interface Desk {
  readonly shelf: Shelf;
  readonly history: History;
  readonly at: number;
}

const START: Desk = {
  shelf: shelfOf({
    recipes: [recipeRow('a'), recipeRow('b')],
    events: [],
    papers: [paperRow('p')],
    supplies: [],
    tools: [],
    photos: [],
  }),
  history: NO_HISTORY,
  at: 0,
};
const TIME = '2026-01-17T09:00:00.000Z';

/** What a maker can do, as the store does it: each act gives the changes of one step, or none if it does not apply. */
type Act = (
  shelf: Shelf,
  number: number,
) => { readonly label: string; readonly changes: readonly RowChange[] } | null;

const editRecipe =
  (
    id: string,
    label: string,
    change: (row: ReturnType<typeof recipeRow>, number: number) => ReturnType<typeof recipeRow>,
  ): Act =>
  (shelf, number) => {
    const before = shelf.recipes.get(id);
    if (!before) return null;
    const fields = compareRows(before, change(before, number));
    return fields.length > 0 ? { label, changes: [{ table: 'recipes', id, do: 'edit', fields }] } : null;
  };

const ACTS: readonly Act[] = [
  editRecipe('a', 'Name', (row, number) => ({ ...row, name: `Name ${number % 3}` })),
  editRecipe('a', 'Width', (row, number) => ({
    ...row,
    sizesMm: { ...row.sizesMm, width: 50 + (number % 4) },
  })),
  editRecipe('a', 'Forget width', (row) => ({ ...row, sizesMm: { depth: 10 } })),
  editRecipe('b', 'Dressing', (row, number) => ({
    ...row,
    dressings: [{ id: `d-${number % 2}`, name: '', pieces: [] }],
  })),
  editRecipe('b', 'Paper', (row, number) => ({ ...row, paperId: number % 2 ? 'p' : null })),
  (shelf, number) => {
    const id = `n-${number}`;
    return shelf.recipes.has(id)
      ? null
      : { label: 'New', changes: [{ table: 'recipes', id, do: 'add', row: recipeRow(id) }] };
  },
  (shelf) => {
    const row = [...shelf.recipes.values()].at(-1);
    return row ? { label: 'Delete', changes: [{ table: 'recipes', id: row.id, do: 'remove', row }] } : null;
  },
  (shelf) => {
    const row = shelf.papers.get('p');
    return row ? { label: 'Delete', changes: [{ table: 'papers', id: 'p', do: 'remove', row }] } : null;
  },
  (shelf, number) => {
    const rows = [recipeRow(`i-${number}`), recipeRow(`j-${number}`)];
    if (rows.some(({ id }) => shelf.recipes.has(id))) return null;
    return {
      label: 'Import',
      changes: rows.map((row) => ({ table: 'recipes', id: row.id, do: 'add', row })),
    };
  },
];

function take(desk: Desk, act: Act, number: number, pause: number): Desk {
  const at = desk.at + pause;
  const found = act(desk.shelf, number);
  if (!found) return { ...desk, at };
  const step: Step = { ...found, at };
  const shelf = takeStep(desk.shelf, step, 'redo', TIME);
  if (!shelf) throw new Error(`a new step did not fit: ${found.label}`);
  return { shelf, history: recordStep(desk.history, step), at };
}

function move(desk: Desk, way: 'undo' | 'redo'): Desk {
  const step = nextStep(desk.history, way);
  if (!step) return desk;
  const shelf = takeStep(desk.shelf, step, way, TIME);
  return shelf
    ? { ...desk, shelf, history: moveStep(desk.history, way) }
    : { ...desk, history: dropStep(desk.history, way) };
}

/** All rows in the order of their ids, without the time of the last change, which undo sets too. */
const content = ({ shelf }: Desk) =>
  Object.entries(shelf).map(([table, rows]: [string, ReadonlyMap<string, object>]) => [
    table,
    [...rows].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, row]) => ({ ...row, changedAt: '' })),
  ]);

const anyActs = fc.array(
  fc.record({
    act: fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom(...ACTS) },
      { weight: 1, arbitrary: fc.constantFrom('undo' as const, 'redo' as const) },
    ),
    number: fc.nat({ max: 12 }),
    pause: fc.constantFrom(0, 300, 999, 1000, 1001, 5000),
  }),
  { minLength: 100, maxLength: 100 },
);
const run = (acts: readonly { act: Act | 'undo' | 'redo'; number: number; pause: number }[]) =>
  acts.reduce(
    (desk, { act, number, pause }) =>
      typeof act === 'string' ? move(desk, act) : take(desk, act, number, pause),
    START,
  );

describe('undo and redo', () => {
  test('everything undone is the beginning, everything redone is the end: a thousand days of a hundred acts', {
    timeout: 60_000,
  }, ({ task }) => {
    let tries = 0;
    fc.assert(
      fc.property(anyActs, (acts) => {
        const end = run(acts);
        const steps = end.history.done.length;
        let back = end;
        for (let n = 0; n < steps; n++) back = move(back, 'undo');
        expect(back.history.done).toEqual([]);
        expect(content(back)).toEqual(content(START));
        let again = back;
        for (let n = 0; n < steps; n++) again = move(again, 'redo');
        expect(content(again)).toEqual(content(end));
        tries++;
      }),
      { seed: SEED, numRuns: 1000 },
    );
    recordFault({ task }, { fault: 'undo and redo of a hundred acts', tries, lost: 1000 - tries, goal: 0 });
  });

  test('a part of it undone and redone changes nothing', () => {
    fc.assert(
      fc.property(anyActs, fc.nat({ max: 99 }), (acts, wanted) => {
        const end = run(acts);
        const count = Math.min(wanted, end.history.done.length);
        let desk = end;
        for (let n = 0; n < count; n++) desk = move(desk, 'undo');
        for (let n = 0; n < count; n++) desk = move(desk, 'redo');
        expect(content(desk)).toEqual(content(end));
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test('two hundred steps are kept, and the oldest fall away', () => {
    let desk = START;
    for (let n = 0; n < 250; n++)
      desk = take(
        desk,
        editRecipe('a', 'Name', (row) => ({ ...row, name: `Name ${n}` })),
        n,
        2000,
      );
    expect(desk.history.done).toHaveLength(200);
    for (let n = 0; n < 200; n++) desk = move(desk, 'undo');
    expect(desk.shelf.recipes.get('a')?.name).toBe('Name 49');
  });
});

describe('typing', () => {
  const type = (texts: readonly string[], pause: number, label = 'Name') =>
    texts.reduce(
      (desk, name) =>
        take(
          desk,
          editRecipe('a', label, (row) => ({ ...row, name })),
          0,
          pause,
        ),
      START,
    );

  test('on in one field is one step, for as long as the pauses are within a second', () => {
    const desk = type(['S', 'Sn', 'Sno', 'Snow'], 1000);
    expect(desk.history.done).toHaveLength(1);
    expect(move(desk, 'undo').shelf.recipes.get('a')?.name).toBe('Recipe a');
    expect(type(['S', 'Sn', 'Sno', 'Snow'], 1001).history.done).toHaveLength(4);
  });

  test('back to what it was leaves no step at all', () => {
    expect(type(['S', 'Recipe a'], 200).history).toEqual(NO_HISTORY);
  });

  test('in another field, under another label, or after an undo begins a new step', () => {
    let desk = type(['S'], 100);
    desk = take(
      desk,
      editRecipe('a', 'Name', (row) => ({ ...row, notes: 'n' })),
      0,
      100,
    );
    expect(desk.history.done).toHaveLength(2);
    desk = take(
      desk,
      editRecipe('a', 'Notes', (row) => ({ ...row, notes: 'no' })),
      0,
      100,
    );
    expect(desk.history.done).toHaveLength(3);
    desk = move(desk, 'undo');
    desk = take(
      desk,
      editRecipe('a', 'Name', (row) => ({ ...row, notes: 'nx' })),
      0,
      100,
    );
    expect(desk.history.done).toHaveLength(3);
    expect(desk.history.undone).toEqual([]);
  });

  test('with the clock set back is not joined to a step of the future', () => {
    expect(type(['S', 'Sn'], -5000).history.done).toHaveLength(2);
  });
});

test('a step whose row is gone does not fit, and says so', () => {
  const step: Step = {
    label: 'Name',
    at: 0,
    changes: [{ table: 'recipes', id: 'a', do: 'edit', fields: [{ at: ['name'], before: 'x', after: 'y' }] }],
  };
  expect(takeStep(EMPTY_SHELF, step, 'undo', TIME)).toBeNull();
  const name = START.shelf.recipes.get('a')?.name;
  const unreadable: Step = {
    ...step,
    changes: [{ table: 'recipes', id: 'a', do: 'edit', fields: [{ at: ['name'], before: 7, after: name }] }],
  };
  expect(takeStep(START.shelf, unreadable, 'undo', TIME)).toBeNull();
  // What is no longer as the step left it stays.
  expect(takeStep(START.shelf, step, 'undo', TIME)).toBeNull();
  expect(takeStep(START.shelf, step, 'redo', TIME)).toBeNull();
});
