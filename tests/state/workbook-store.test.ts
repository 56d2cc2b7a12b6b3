import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

describe('a maker at her shelf', () => {
  test('finds tomorrow what she made today', async () => {
    const world = new World();
    const today = await openTab(world);
    const made = today.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
    expect(made.ok).toBe(true);
    await letRun(300);
    expect(today.getState().save).toEqual({ state: 'saved' });
    const tomorrow = await openTab(world, 'b');
    const [recipe] = tomorrow.getState().rows.recipes.values();
    expect(recipe).toMatchObject({ name: 'Snow tray', styleId: 'tray', rev: 1 });
  });

  test('is told why a size cannot be kept, and her recipe stays as it was', async () => {
    const { getState } = await openTab(new World());
    const made = getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
    const id = made.ok ? made.id : '';
    const refusals = getState().edit('recipes', id, 'Width', (row) => ({ ...row, sizesMm: { width: 3000 } }));
    expect(refusals).toEqual([
      { code: 'too-big', path: 'sizesMm.width', found: '3000', expected: 'at most 2000' },
    ]);
    expect(getState().rows.recipes.get(id)?.sizesMm).toEqual({});
  });
});
