import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';
import { type Device, device, meet } from './devices';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const SIZES = { width: 100, depth: 80, height: 25, relief: 1 };

const rowsOf = ({ store }: Device) =>
  Object.fromEntries(
    [...store.getState().rows.recipes].map(([id, { rev: _, changedAt: __, ...row }]) => [id, row]),
  );
const recipe = ({ store }: Device, id: string) => store.getState().rows.recipes.get(id);
const codes = ({ store }: Device) => store.getState().notices.map(({ code }) => code);

async function pair(): Promise<{ a: Device; b: Device; id: string }> {
  const [a, b] = [await device('a'), await device('b')];
  const made = a.store.getState().createRecipe({ name: 'Snow tray', styleId: 'tray', sizesMm: SIZES });
  if (!made.ok) throw new Error('refused');
  await meet(a, b);
  return { a, b, id: made.id };
}

const edit = ({ store }: Device, id: string, change: object) =>
  store.getState().edit('recipes', id, 'Change', (row) => ({ ...row, ...change }));
const size = (on: Device, id: string, name: string, mm: number) =>
  edit(on, id, { sizesMm: { ...recipe(on, id)?.sizesMm, [name]: mm } });

describe('two devices', () => {
  test('that work apart on different fields of one recipe both have both when they meet', async () => {
    const { a, b, id } = await pair();
    expect(recipe(b, id)?.name).toBe('Snow tray');
    edit(a, id, { name: 'Frost tray' });
    edit(b, id, { notes: 'two coats' });
    size(b, id, 'height', 30);
    await meet(a, b);
    for (const on of [a, b])
      expect(recipe(on, id)).toMatchObject({
        name: 'Frost tray',
        notes: 'two coats',
        sizesMm: { height: 30 },
      });
    expect([...codes(a), ...codes(b)]).toEqual([]);
  });

  test('undo on one takes back its own field alone', async () => {
    const { a, b, id } = await pair();
    edit(a, id, { name: 'Frost tray' });
    edit(b, id, { notes: 'two coats' });
    await meet(a, b);
    a.store.getState().undo();
    await meet(a, b);
    for (const on of [a, b]) expect(recipe(on, id)).toMatchObject({ name: 'Snow tray', notes: 'two coats' });
  });

  test('what is deleted on one goes to the bin of the other, as it was worked on there', async () => {
    const { a, b, id } = await pair();
    a.store.getState().remove({ table: 'recipes', id });
    edit(b, id, { notes: 'in the meantime' });
    await meet(a, b);
    for (const on of [a, b]) expect(recipe(on, id)).toBeUndefined();
    const binned = await b.store.getState().listBin();
    expect(binned.ok && binned.value.map(({ row }) => ('notes' in row ? row.notes : ''))).toEqual([
      'in the meantime',
    ]);
  });

  test('sizes that are good one by one and cannot be folded together stay apart until they go together', async () => {
    const { a, b, id } = await pair();
    // The tray's own rule: the relief of its corner tabs is at most the height less 1/4 in.
    size(a, id, 'height', 10);
    size(b, id, 'relief', 6);
    await meet(a, b);
    expect(recipe(a, id)?.sizesMm).toEqual({ ...SIZES, height: 10 });
    expect(recipe(b, id)?.sizesMm).toEqual({ ...SIZES, relief: 6 });
    expect([codes(a), codes(b)]).toEqual([['heldApart'], ['heldApart']]);
    size(a, id, 'height', 40);
    await meet(a, b);
    for (const on of [a, b]) expect(recipe(on, id)?.sizesMm).toEqual({ ...SIZES, height: 40, relief: 6 });
  });

  test('a row that today’s app cannot read does not come in, and hers goes on', async () => {
    const { a, b, id } = await pair();
    b.exchange.tell([
      { table: 'recipes', id, do: 'edit', fields: [{ at: ['sizesMm', 'width'], before: 1, after: 'wide' }] },
    ]);
    await meet(a, b);
    expect(recipe(a, id)?.sizesMm['width']).toBeTypeOf('number');
    expect(codes(a)).toEqual(['heldApart']);
    edit(a, id, { notes: 'goes on' });
    await meet(a, b);
    expect(recipe(a, id)?.notes).toBe('goes on');
    b.exchange.tell([
      { table: 'recipes', id, do: 'edit', fields: [{ at: ['sizesMm', 'width'], before: 'wide', after: 70 }] },
    ]);
    await meet(a, b);
    expect(recipe(a, id)?.sizesMm['width']).toBe(70);
  });

  test('one of which would take more than a fifth off the other’s shelf is not heard any more', async () => {
    const { a, b } = await pair();
    for (let n = 0; n < 4; n++) a.store.getState().createRecipe({ name: `Box ${n}`, styleId: 'tray' });
    await meet(a, b);
    expect(Object.keys(rowsOf(b))).toHaveLength(5);
    for (const id of Object.keys(rowsOf(a)).slice(0, 2)) a.store.getState().remove({ table: 'recipes', id });
    await meet(a, b);
    expect(Object.keys(rowsOf(b))).toHaveLength(5);
    expect(codes(b)).toEqual(['exchangeStopped']);
  });

  test('three of them, apart and together at random: no field of anyone is lost, and all agree at the end', async (context) => {
    let tries = 0;
    let lost = 0;
    const act = fc.record({
      who: fc.nat(2),
      field: fc.constantFrom('notes', 'depth', 'width', 'height'),
      meet: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { minLength: 4, maxLength: 12 }), async (acts) => {
        const { a, b, id } = await pair();
        const devices = [a, b, await device('c')];
        await meet(...devices);
        const last = new Map<string, unknown>();
        // Each field belongs to one device, so that whatever is missing at the end was lost and not outvoted.
        const owner: Record<string, number> = { notes: 0, depth: 1, width: 2, height: 0 };
        for (const [n, { who, field, meet: together }] of acts.entries()) {
          const on = devices[owner[field] ?? who] ?? a;
          if (field === 'notes') edit(on, id, { notes: `word ${n}` });
          else size(on, id, field, 60 + n);
          last.set(field, field === 'notes' ? `word ${n}` : 60 + n);
          if (together) await meet(on, devices[who] ?? a);
        }
        await meet(...devices);
        tries++;
        for (const on of devices) {
          const row = recipe(on, id);
          for (const [field, value] of last)
            if ((field === 'notes' ? row?.notes : row?.sizesMm[field]) !== value) lost++;
          expect(rowsOf(on)).toEqual(rowsOf(a));
        }
      }),
      { numRuns: 60, seed: SEED },
    );
    recordFault(context, { fault: 'devices apart and together again (by a double)', tries, lost, goal: 0 });
  });
});
