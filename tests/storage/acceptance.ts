import { afterEach, describe, expect, test } from 'vitest';
import type { Change, StorageEvent, WorkbookStorage } from '../../src/storage/port';
import { readOne } from './read-one';
import { eventRow, paperRow, photoRow, recipeRow, supplyRow, toolRow } from './sample-rows';

/** One place that several tabs stand on. */
export interface Place {
  open(): Promise<WorkbookStorage>;
  /** Puts a row in as it is, past every check: what another version, or a fault, may have left there. */
  plant(table: string, row: { id: string }): Promise<void> | void;
  /** Takes a row out behind everybody's back. */
  lose(table: string, id: string): Promise<void> | void;
  /** Forgets what was counted outside the database, or sets it. */
  countOutside(census: unknown): void;
}

const AT = '2026-01-17T09:00:00.000Z';
const later = (minutes: number) => new Date(Date.parse(AT) + minutes * 60_000).toISOString();

/** What every adapter of the port promises. Run once for each. */
export function describeStorage(name: string, newPlace: () => Place): void {
  const opened: WorkbookStorage[] = [];
  afterEach(() => {
    for (const storage of opened.splice(0)) storage.close();
  });
  const open = async (place: Place) => {
    const storage = await place.open();
    opened.push(storage);
    return storage;
  };
  const openNew = async () => {
    const place = newPlace();
    return { place, storage: await open(place) };
  };
  const write = async (storage: WorkbookStorage, changes: readonly Change[], at = AT) => {
    const result = await storage.write(changes, at);
    if (!result.ok) throw new Error(result.fault.detail);
    return result.value;
  };
  const load = async (storage: WorkbookStorage) => {
    const result = await storage.load();
    if (!result.ok) throw new Error(result.fault.detail);
    return result.value;
  };
  const put = (row: ReturnType<typeof recipeRow>, basedOn: number | null): Change => ({
    table: 'recipes',
    id: row.id,
    row,
    deleted: false,
    basedOn,
  });
  const bin = (row: ReturnType<typeof recipeRow>, basedOn: number | null): Change => ({
    ...put(row, basedOn),
    deleted: true,
  });
  const value = async <Value>(result: Promise<{ ok: true; value: Value } | { ok: false }>) => {
    const settled = await result;
    if (!settled.ok) throw new Error('refused');
    return settled.value;
  };

  describe(`a workbook kept in ${name}`, () => {
    test('starts empty, with nothing lost', async () => {
      const { storage } = await openNew();
      expect(await load(storage)).toEqual({
        generation: 0,
        rows: { recipes: [], events: [], papers: [], supplies: [], tools: [], photos: [] },
        quarantined: [],
        notes: {},
        loss: null,
      });
    });

    test('gives back every kind of row as it was kept, with its first revision', async () => {
      const { place, storage } = await openNew();
      const rows = {
        recipes: recipeRow('a'),
        events: eventRow('b'),
        papers: paperRow('c'),
        supplies: supplyRow('d'),
        tools: toolRow('e'),
        photos: photoRow('f'),
      };
      const changes = Object.entries(rows).map(
        ([table, row]) => ({ table, id: row.id, row, deleted: false, basedOn: null }) as unknown as Change,
      );
      expect(await write(storage, changes)).toMatchObject({ outcome: 'kept', revs: [1, 1, 1, 1, 1, 1] });
      const found = (await load(await open(place))).rows;
      for (const [table, row] of Object.entries(rows))
        expect(found[table as 'recipes']).toEqual([{ ...row, rev: 1 }]);
    });

    test('counts revisions up, whatever the row itself says', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      expect(await write(storage, [put(recipeRow('a', { rev: 1 }), 1)])).toMatchObject({ revs: [2] });
      expect(await write(storage, [put(recipeRow('a', { rev: 0 }), 2)])).toMatchObject({ revs: [3] });
    });

    test('keeps neither of two changes when one is based on an old revision, and hands both states over', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a', { notes: 'first' }), null), put(recipeRow('b'), null)]);
      await write(storage, [put(recipeRow('a', { notes: 'theirs' }), 1)]);
      const mine = recipeRow('a', { notes: 'mine' });
      const written = await write(storage, [put(recipeRow('b', { notes: 'other' }), 1), put(mine, 1)]);
      expect(written).toEqual({
        outcome: 'conflict',
        conflicts: [{ table: 'recipes', id: 'a', theirs: recipeRow('a', { notes: 'theirs', rev: 2 }) }],
      });
      const { recipes } = (await load(storage)).rows;
      expect(recipes.map(({ notes }) => notes)).toEqual(['theirs', '']);
    });

    test('sees a change to a row that was deleted, and a new row under an id that is taken', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      expect(await write(storage, [put(recipeRow('a'), null)])).toMatchObject({ outcome: 'conflict' });
      await write(storage, [bin(recipeRow('a'), 1)]);
      expect(await write(storage, [put(recipeRow('a'), 1)])).toMatchObject({
        conflicts: [{ theirs: 'gone' }],
      });
    });

    test('lets only one of two tabs win that write at the same moment', async () => {
      const { place, storage } = await openNew();
      const other = await open(place);
      await write(storage, [put(recipeRow('a'), null)]);
      const written = await Promise.all([
        write(storage, [put(recipeRow('a', { notes: 'one' }), 1)]),
        write(other, [put(recipeRow('a', { notes: 'two' }), 1)]),
      ]);
      expect(written.map(({ outcome }) => outcome).sort()).toEqual(['conflict', 'kept']);
    });

    test('moves a deleted row to the bin and takes it out again with a higher revision', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      expect(await write(storage, [bin(recipeRow('a'), 1)])).toMatchObject({ outcome: 'kept', revs: [null] });
      expect((await load(storage)).rows.recipes).toEqual([]);
      expect(await value(storage.listBin())).toMatchObject([
        { id: 'recipes/a', table: 'recipes', row: recipeRow('a', { rev: 2 }), deletedAt: AT },
      ]);
      expect(await write(storage, [put(recipeRow('a'), null)])).toMatchObject({ outcome: 'kept', revs: [3] });
      expect(await value(storage.listBin())).toEqual([]);
    });

    test('keeps what lay in the bin as an earlier state when something else takes its id', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      await write(storage, [bin(recipeRow('a', { notes: 'binned' }), 1)]);
      await write(storage, [put(recipeRow('a', { notes: 'from a file' }), null)]);
      const snapshots = await value(storage.listSnapshots('recipes', 'a'));
      expect(snapshots.map(({ row }) => (row as { notes: string }).notes)).toEqual(['binned']);
    });

    test('keeps the last words of a row in the bin, also those that were never kept before', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      await write(storage, [bin(recipeRow('a', { notes: 'last words' }), 1)]);
      await write(storage, [bin(recipeRow('b', { notes: 'never kept' }), null)]);
      await write(storage, [bin(recipeRow('b', { notes: 'deleted elsewhere too' }), null)]);
      const binned = (await value(storage.listBin())).map(({ row }) => ('notes' in row ? row.notes : ''));
      expect(binned.sort()).toEqual(['deleted elsewhere too', 'last words']);
      const [earlier] = await value(storage.listSnapshots('recipes', 'b'));
      expect(earlier?.row).toMatchObject({ notes: 'never kept' });
      expect((await load(storage)).loss).toBeNull();
    });

    test('empties the bin of what was deleted more days of use ago than it keeps, and of its earlier states', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null), put(recipeRow('b'), null)]);
      await value(storage.openDay('2026-01-17', 2));
      await write(storage, [put(recipeRow('a'), 1)]);
      await write(storage, [bin(recipeRow('a'), 2)]);
      for (const day of ['2026-01-18', '2026-01-18', '2026-01-19'])
        expect(await value(storage.openDay(day, 2))).toBe(0);
      await write(storage, [bin(recipeRow('b'), 1)]);
      expect(await value(storage.openDay('2026-03-01', 2))).toBe(1);
      expect((await value(storage.listBin())).map(({ id }) => id)).toEqual(['recipes/b']);
      expect(await value(storage.listSnapshots('recipes', 'a'))).toEqual([]);
    });

    test('counts what was deleted before days were counted from today on', async () => {
      const { place, storage } = await openNew();
      const old = {
        id: 'recipes/a',
        table: 'recipes',
        row: recipeRow('a'),
        deletedAt: '2020-01-01T09:00:00.000Z',
      };
      await place.plant('bin', old);
      expect(await value(storage.openDay('2026-01-17', 1))).toBe(0);
      expect(await value(storage.openDay('2026-01-18', 1))).toBe(0);
      expect(await value(storage.openDay('2026-01-19', 1))).toBe(1);
    });

    test('frees the room of the bin when asked to, and of all earlier states', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null), put(recipeRow('b'), null)]);
      await write(storage, [put(recipeRow('a'), 1)]);
      await write(storage, [put(recipeRow('b'), 1)]);
      await write(storage, [bin(recipeRow('a'), 2)]);
      expect(await value(storage.freeRoom(false))).toBe(1);
      expect(await value(storage.listBin())).toEqual([]);
      expect((await value(storage.listAllSnapshots())).map(({ of }) => of)).toEqual(['recipes/b']);
      expect(await value(storage.freeRoom(true))).toBe(1);
      expect(await value(storage.listAllSnapshots())).toEqual([]);
      expect(await load(storage)).toMatchObject({ rows: { recipes: [{ id: 'b' }] }, loss: null });
    });

    test('deletes for good, past the bin, when asked to', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      await write(storage, [{ ...bin(recipeRow('a'), 1), forGood: true }]);
      expect(await value(storage.listBin())).toEqual([]);
      expect(await load(storage)).toMatchObject({ rows: { recipes: [] }, loss: null });
    });

    test('keeps the last twenty earlier states, some minutes apart, newest first', async () => {
      const { storage } = await openNew();
      await write(storage, [put(recipeRow('a', { notes: '0' }), null)]);
      // Thirty changes, six minutes apart; each is followed a second later by one more, which makes no state of its own.
      let rev = 1;
      for (let n = 1; n <= 30; n++) {
        await write(storage, [put(recipeRow('a', { notes: `${n}` }), rev++)], later(n * 6));
        await write(storage, [put(recipeRow('a', { notes: `${n}+` }), rev++)], later(n * 6 + 1 / 60));
      }
      const notes = (await value(storage.listSnapshots('recipes', 'a'))).map(
        ({ row }) => (row as { notes: string }).notes,
      );
      expect(notes).toHaveLength(20);
      expect(notes[0]).toBe('29+');
      expect(notes.at(-1)).toBe('10+');
    });

    test('keeps notes in the same transaction as rows: neither, when the rows meet a conflict', async () => {
      const { storage } = await openNew();
      await storage.write([put(recipeRow('a'), null)], AT, [{ id: 'settings', value: { unit: 'mm' } }]);
      expect((await load(storage)).notes).toMatchObject({ settings: { unit: 'mm' } });
      await storage.write([put(recipeRow('a'), null)], AT, [{ id: 'settings', value: { unit: 'in' } }]);
      expect((await load(storage)).notes).toMatchObject({ settings: { unit: 'mm' } });
    });

    test('lays only the changed fields of a note over what another tab kept, and tells what is there now', async () => {
      const { place, storage } = await openNew();
      const other = await open(place);
      const before = { unit: 'in', theme: 'light' };
      await storage.write([], AT, [{ id: 'settings', value: before }]);
      await other.write([], AT, [{ id: 'settings', before, value: { ...before, unit: 'mm' } }]);
      const written = await value(
        storage.write([], AT, [{ id: 'settings', before, value: { ...before, theme: 'dark' } }]),
      );
      expect(written).toMatchObject({ notes: { settings: { unit: 'mm', theme: 'dark' } }, generation: 0 });
      expect((await value(other.readNotes())).notes).toMatchObject({
        settings: { unit: 'mm', theme: 'dark' },
      });
    });

    test('counts how often rows were kept, in whatever tab, and notes kept alone not at all', async () => {
      const { place, storage } = await openNew();
      const other = await open(place);
      await write(storage, [put(recipeRow('a'), null)]);
      await write(other, [put(recipeRow('b'), null)]);
      await storage.write([], AT, [{ id: 'settings', value: 1 }]);
      expect((await value(other.readNotes())).generation).toBe(2);
      expect((await load(await open(place))).generation).toBe(2);
    });

    test('reads one row as it stands now', async () => {
      const { place, storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      await place.plant('recipes', { id: 'bad' });
      expect(await readOne(storage, 'recipes', 'a')).toEqual(recipeRow('a', { rev: 1 }));
      expect(await readOne(storage, 'recipes', 'nowhere')).toBe('gone');
      expect(await readOne(storage, 'recipes', 'bad')).toBe('unreadable');
    });

    test('sets a row it cannot read aside, whole, and never writes over it', async () => {
      const { place, storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      const bad = { ...recipeRow('bad'), caliperUm: 'thick' };
      await place.plant('recipes', bad);
      const stored = await load(await open(place));
      expect(stored.rows.recipes.map(({ id }) => id)).toEqual(['a']);
      expect(stored.quarantined).toEqual([
        {
          table: 'recipes',
          id: 'bad',
          raw: bad,
          refusals: [{ code: 'wrong-type', path: 'caliperUm', found: '"thick"', expected: 'number' }],
        },
      ]);
      expect(await write(storage, [put(recipeRow('bad'), null)])).toMatchObject({
        conflicts: [{ theirs: 'unreadable' }],
      });
      expect((await load(storage)).quarantined).toHaveLength(1);
    });

    test('moves a row it cannot read to the bin as it is, and back, without calling either a loss', async () => {
      const { place, storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null), put(recipeRow('bad'), null)]);
      const bad = { ...recipeRow('bad', { rev: 1 }), caliperUm: 'thick' };
      await place.plant('recipes', bad);
      expect((await load(storage)).quarantined.map(({ id }) => id)).toEqual(['bad']);
      expect(await value(storage.readAgain('recipes', 'bad'))).toMatchObject({ id: 'bad', raw: bad });
      expect(await value(storage.binAside('recipes', 'a', AT))).toBe(false);
      expect(await value(storage.binAside('recipes', 'nowhere', AT))).toBe(false);

      expect(await value(storage.binAside('recipes', 'bad', AT))).toBe(true);
      expect(await value(storage.listBinAside())).toEqual([
        { id: 'recipes/bad', table: 'recipes', raw: bad, deletedAt: AT },
      ]);
      expect(await value(storage.listBin())).toEqual([]);
      expect(await load(await open(place))).toMatchObject({ quarantined: [], loss: null });

      expect(await value(storage.unbinAside('recipes', 'bad'))).toBe(true);
      expect(await value(storage.unbinAside('recipes', 'bad'))).toBe(false);
      const stored = await load(await open(place));
      expect(stored.quarantined.map(({ raw }) => raw)).toEqual([bad]);
      expect(stored.loss).toBeNull();
    });

    test('keeps a row it cannot read among the earlier states when another takes its name, and lets the bin forget it', async () => {
      const { place, storage } = await openNew();
      const bad = { id: 'bad', rev: 'many', name: 'Snow' };
      await place.plant('recipes', bad);
      await value(storage.binAside('recipes', 'bad', AT));
      await write(storage, [put(recipeRow('bad'), null)]);
      expect((await value(storage.listSnapshots('recipes', 'bad'))).map(({ row }) => row)).toEqual([bad]);
      expect((await value(storage.listAllSnapshots())).map(({ of }) => of)).toEqual(['recipes/bad']);

      await place.plant('papers', { id: 'old' });
      await value(storage.binAside('papers', 'old', AT));
      expect(await value(storage.freeRoom(false))).toBe(1);
      expect(await value(storage.listBinAside())).toEqual([]);
    });

    test('notices rows that are gone without having been deleted', async () => {
      const { place, storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null), put(recipeRow('b'), null)]);
      expect((await load(storage)).loss).toBeNull();
      await place.lose('recipes', 'a');
      const reopened = await open(place);
      expect((await load(reopened)).loss).toEqual({
        expected: { generation: 1, rows: 2, revSum: 2 },
        found: { generation: 1, rows: 1, revSum: 1 },
      });
      await reopened.acceptLoss();
      expect((await load(reopened)).loss).toBeNull();
    });

    test('notices a whole database that is older than what was counted outside it, but not one that is a write ahead', async () => {
      const { place, storage } = await openNew();
      await write(storage, [put(recipeRow('a'), null)]);
      place.countOutside({ generation: 9, rows: 5, revSum: 40 });
      expect((await load(storage)).loss?.expected).toEqual({ generation: 9, rows: 5, revSum: 40 });
      await storage.acceptLoss();
      expect((await load(storage)).loss).toBeNull();
      await write(storage, [put(recipeRow('a'), 1)]);
      place.countOutside({ generation: 10, rows: 1, revSum: 1 });
      expect((await load(storage)).loss).toBeNull();
      place.countOutside('scribble');
      expect((await load(storage)).loss).toBeNull();
    });

    test('tells other tabs what was kept, and not the tab that kept it', async () => {
      const { place, storage } = await openNew();
      const other = await open(place);
      const heard: [string, StorageEvent][] = [];
      storage.watch((event) => heard.push(['mine', event]));
      const arrived = new Promise<void>((resolve) => {
        other.watch((event) => {
          heard.push(['other', event]);
          resolve();
        });
      });
      await write(storage, [put(recipeRow('a'), null)]);
      await arrived;
      expect(heard).toEqual([
        [
          'other',
          { event: 'changed-elsewhere', keys: [{ table: 'recipes', id: 'a' }], notes: [], generation: 1 },
        ],
      ]);
    });

    test('forgets everything when asked to, without calling it a loss', async () => {
      const { place, storage } = await openNew();
      await storage.write([put(recipeRow('a'), null)], AT, [{ id: 'settings', value: 1 }]);
      await write(storage, [bin(recipeRow('a'), 1)]);
      await storage.eraseAll();
      expect(await load(await open(place))).toMatchObject({ rows: { recipes: [] }, notes: {}, loss: null });
      expect(await value(storage.listBin())).toEqual([]);
    });
  });
}
