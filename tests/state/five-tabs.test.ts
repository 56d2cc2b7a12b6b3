import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import type { RowChange } from '../../src/state/keeping/steps';
import type { WorkbookStore } from '../../src/state/workbook-store';
import type { WorkbookStorage } from '../../src/storage/port';
import { FUZZ_SEED } from '../fuzz';
import { recordFault } from '../setup/fault-record';
import { readOne } from '../storage/read-one';
import { RealWorld, turns } from './real-world';

// The database works in turns of the real event loop; only what the app waits for by the clock is moved on by hand.
beforeEach(
  () =>
    void vi.useFakeTimers({
      now: Date.UTC(2026, 0, 17, 9),
      toFake: ['setTimeout', 'clearTimeout', 'Date'],
    }),
);
afterEach(() => void vi.useRealTimers());

/** How many histories are played: all with `npm run fuzz`. */
const HISTORIES = Number(process.env['FIVE_TABS'] ?? 60);

type Act = {
  readonly tab: number;
  readonly what:
    | 'line'
    | 'size'
    | 'note'
    | 'add'
    | 'remove'
    | 'undo'
    | 'backup'
    | 'restore'
    | 'kill'
    | 'keep';
  readonly row: number;
  readonly turns: number;
  readonly late: number;
};
const anyAct: fc.Arbitrary<Act> = fc.record({
  tab: fc.nat(4),
  what: fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom('line' as const, 'size' as const, 'note' as const) },
    { weight: 6, arbitrary: fc.constantFrom('add' as const, 'undo' as const, 'keep' as const) },
    { weight: 2, arbitrary: fc.constantFrom('remove' as const, 'backup' as const, 'kill' as const) },
    { weight: 1, arbitrary: fc.constant('restore' as const) },
  ),
  row: fc.nat(9),
  turns: fc.constantFrom(0, 0, 1, 3, 10, 40),
  late: fc.nat(3),
});
const anyHistory = fc.array(anyAct, { minLength: 10, maxLength: 40 });

const TOKEN = /w\d+e/g;
const tokensOf = (value: unknown): Set<string> => new Set(JSON.stringify(value).match(TOKEN) ?? []);
const rowsOf = (store: WorkbookStore) =>
  Object.values(store.getState().rows).flatMap((rows) => [...rows.values()]);

/** The words that a step itself put on the shelf. */
const ownTokens = (changes: readonly RowChange[]): Set<string> => {
  const sides = changes.map((change) =>
    change.do === 'edit'
      ? [
          change.fields.map(({ at, before }) => [at, before]),
          change.fields.map(({ at, after }) => [at, after]),
        ]
      : [[], change.do === 'add' ? change.row : []],
  );
  const before = tokensOf(sides.map(([was]) => was));
  // The name of a size is a word of its own: it stands in the place, and there was no size before.
  const added = changes.flatMap((change) =>
    change.do === 'edit'
      ? change.fields.filter((field) => field.before === undefined).map(({ at }) => at)
      : [],
  );
  const own = tokensOf(sides.map(([, is]) => is));
  const fresh = tokensOf(added);
  return new Set([...own].filter((token) => !before.has(token) || fresh.has(token)));
};

class Play {
  readonly world = new RealWorld();
  readonly tabs: { name: string; store: WorkbookStore; typed: string[] }[] = [];
  /** Words of which a tab said that they are saved, less those that the maker took away herself. */
  readonly acknowledged = new Set<string>();
  readonly takenAway = new Set<string>();
  readonly #wrap: (storage: WorkbookStorage) => WorkbookStorage;
  backup: readonly string[] = [];
  words = 0;
  tabsOpened = 0;
  restores = 0;

  constructor(wrap: (storage: WorkbookStorage) => WorkbookStorage) {
    this.#wrap = wrap;
  }

  async openTab(at: number): Promise<void> {
    const name = `t${++this.tabsOpened}`;
    this.tabs[at] = { name, store: await this.world.open(name, this.#wrap), typed: [] };
  }

  async start(): Promise<void> {
    await this.openTab(0);
    const { createRecipe, createEvent, keepNow } = this.at(0).store.getState();
    createRecipe({ name: 'Snow tray', styleId: 'tray' });
    createEvent({ name: 'Market' });
    await keepNow();
    for (let tab = 1; tab < 5; tab++) await this.openTab(tab);
  }

  at(tab: number) {
    const found = this.tabs[tab];
    if (!found) throw new Error('no such tab');
    return found;
  }

  /** What a tab says is saved counts from then on. */
  hear(): void {
    for (const tab of this.tabs) {
      if (tab.store.getState().save.state !== 'saved') continue;
      for (const word of tab.typed.splice(0)) this.acknowledged.add(word);
    }
  }

  async take({ tab, what, row, late }: Act): Promise<void> {
    const { store, typed, name } = this.at(tab);
    const state = store.getState();
    const { recipes, events } = state.rows;
    const recipe = [...recipes.keys()][row % Math.max(1, recipes.size)] ?? '';
    const event = [...events.keys()][row % Math.max(1, events.size)] ?? '';
    const word = `w${++this.words}e`;
    const typedIf = (refusals: readonly unknown[]) => refusals.length === 0 && typed.push(word);
    if (what === 'line')
      typedIf(
        state.edit('events', event, 'Line', (was) => ({
          ...was,
          lines: [...was.lines, { id: word, recipeId: recipe, dressingId: null, paperId: null, count: 1 }],
        })),
      );
    else if (what === 'size')
      typedIf(
        state.edit('recipes', recipe, 'Size', (was) => ({ ...was, sizesMm: { ...was.sizesMm, [word]: 40 } })),
      );
    else if (what === 'note')
      typedIf(state.edit('recipes', recipe, 'Notes', (was) => ({ ...was, notes: `${was.notes} ${word}` })));
    else if (what === 'add') typedIf(state.createRecipe({ name: word, styleId: 'tray' }).ok ? [] : [1]);
    else if (what === 'remove') {
      for (const gone of tokensOf(recipes.get(recipe) ?? {})) this.takenAway.add(gone);
      state.remove({ table: 'recipes', id: recipe });
    } else if (what === 'undo') {
      const before = tokensOf(rowsOf(store));
      state.undo();
      const after = tokensOf(rowsOf(store));
      // Steps that no longer fit were passed over on the way.
      const steps = state.history.done.slice(store.getState().history.done.length);
      for (const own of ownTokens(steps.flatMap(({ changes }) => changes)))
        if (before.has(own) && !after.has(own)) this.takenAway.add(own);
    } else if (what === 'keep') void state.keepNow();
    else if (what === 'backup') this.backup = await backupOf(store);
    else if (what === 'restore' && this.restores++ < 2) {
      for (const text of this.backup) {
        const reading = readWorkbook(text);
        if (reading.ok) state.importPlanned(state.planImport(reading.file), 'Restore');
      }
    } else if (what === 'kill') {
      this.hear();
      this.world.kill(name, late);
      await this.openTab(tab);
    }
  }

  /** Lets every tab keep what it has and hear of what the others kept. */
  async settle(): Promise<void> {
    for (let round = 0; round < 6; round++) {
      await vi.advanceTimersByTimeAsync(3000);
      await turns(60);
      for (const { store } of this.tabs) await store.getState().keepNow();
    }
    this.hear();
  }

  missingIn(rows: unknown): string[] {
    const there = tokensOf(rows);
    return [...this.acknowledged].filter((word) => !there.has(word) && !this.takenAway.has(word));
  }
}

async function backupOf(store: WorkbookStore): Promise<readonly string[]> {
  const texts: string[] = [];
  const { backup } = await store.getState().keeping();
  await backup((_name, text) => texts.push(text));
  return texts;
}

/** Words that were said to be saved and are missing at the end: on the shelf of a new tab, on that of one that stayed, or in a backup. */
async function lostWords(acts: readonly Act[], wrap = (storage: WorkbookStorage) => storage) {
  const play = new Play(wrap);
  await play.start();
  for (const act of acts) {
    await play.take(act);
    play.hear();
    if (act.turns > 0) {
      await vi.advanceTimersByTimeAsync(act.turns * 20);
      await turns(act.turns);
      play.hear();
    }
  }
  await play.settle();
  const last = await play.world.open('last', wrap);
  const lost = [
    ...play.missingIn(rowsOf(last)),
    ...play.missingIn(rowsOf(play.at(0).store)),
    ...play.missingIn(await backupOf(last)),
  ];
  play.world.closeAll();
  return { lost, acknowledged: play.acknowledged.size, takenAway: play.takenAway.size };
}

test('whatever five tabs were told is saved is on the shelf and in a backup, however their work meets', {
  timeout: 3_600_000,
}, async ({ task }) => {
  let [tries, lost, acknowledged] = [0, 0, 0];
  await fc.assert(
    fc.asyncProperty(anyHistory, async (acts) => {
      const played = await lostWords(acts);
      tries++;
      acknowledged += played.acknowledged;
      lost += played.lost.length;
      expect(played.lost).toEqual([]);
    }),
    { seed: FUZZ_SEED, numRuns: HISTORIES },
  );
  expect(acknowledged).toBeGreaterThan(HISTORIES);
  recordFault({ task }, { fault: 'five tabs on one browser database', tries, lost, goal: 0 });
});

/** A storage as it must not be: whoever comes last is right. */
const carelessStorage = (storage: WorkbookStorage): WorkbookStorage => ({
  ...storage,
  async write(changes, ...rest) {
    const careless = [];
    for (const change of changes) {
      const stored = await readOne(storage, change.table, change.id);
      careless.push({ ...change, basedOn: typeof stored === 'string' ? null : stored.rev });
    }
    return storage.write(careless, ...rest);
  },
});

test('a storage that does not compare revisions is found out by the same histories', {
  timeout: 120_000,
}, async () => {
  let lost = 0;
  for (const acts of fc.sample(anyHistory, { seed: FUZZ_SEED, numRuns: 12 }))
    lost += (await lostWords(acts, carelessStorage)).lost.length;
  expect(lost).toBeGreaterThan(2);
});
