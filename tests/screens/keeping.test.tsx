import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { workbookOf, writeWorkbook } from '../../shared/write-workbook';
import type { WorkbookPorts } from '../../src/state/ports';
import { FolderDouble } from '../state/folder-double';
import { openTab, World } from '../state/open-tab';
import { paperRow, recipeRow } from '../storage/sample-rows';
import { openApp } from './open-app';

const saved: Blob[] = [];
beforeEach(() => {
  saved.length = 0;
  const createObjectURL = (blob: Blob) => {
    saved.push(blob);
    return 'blob:made';
  };
  vi.stubGlobal('URL', Object.assign(URL, { createObjectURL, revokeObjectURL: () => undefined }));
});

/** Two boxes and a paper; with `bad`, one more box that cannot be read. */
async function openKeeping(address: string, ports: Partial<WorkbookPorts> = {}, bad = false) {
  const world = new World();
  const first = await openTab(world, 'first');
  const rows = { recipes: [recipeRow('snow', { name: 'Snow' }), recipeRow('rain')], papers: [paperRow('p')] };
  first.getState().importPlanned(first.getState().planImport(workbookOf('everything', rows)), 'Take it in');
  await first.getState().keepNow();
  if (bad) {
    const row = world.disk.contents.recipes.get('rain') as object;
    world.disk.contents.recipes.set('rain', { ...row, name: 'Rain', caliperUm: 'thick' });
  }
  const workbook = await openTab(world, 'a', undefined, ports);
  await openApp(address, workbook);
  return { world, workbook, user: userEvent.setup() };
}
const press = async (user: ReturnType<typeof userEvent.setup>, name: string | RegExp) =>
  user.click(await screen.findByRole('button', { name }));

describe('what was set aside', () => {
  test('is said on the shelf, and looked at, kept, tried, binned and taken out on its page', async () => {
    const { workbook, user } = await openKeeping('/', {}, true);
    expect(await screen.findByText(/1 item can’t be opened and is set aside.*box “Rain”/)).toBeVisible();
    await user.click(screen.getByRole('link', { name: 'Open it' }));
    expect(await screen.findByText('Expected number, found "thick".')).toBeVisible();

    await press(user, 'Save a copy to a file, Rain (box)');
    expect(JSON.parse(await saved[0]!.text())).toMatchObject({
      rows: [{ table: 'recipes', id: 'rain', row: { name: 'Rain', caliperUm: 'thick' } }],
    });
    await press(user, 'Try again, Rain (box)');
    expect(await screen.findByText('Rain (box) still can’t be opened. It’s unchanged.')).toBeVisible();
    await press(user, 'Move to trash, Rain (box)');
    expect(await screen.findByText(/^This version of the app can’t open it. deleted today/)).toBeVisible();
    expect(screen.queryByRole('heading', { name: 'Set aside' })).toBeNull();
    await press(user, 'Restore, Rain (box)');
    expect(await screen.findByRole('heading', { name: 'Set aside' })).toBeVisible();
    expect(workbook.getState().quarantined).toHaveLength(1);
  });

  test('of a database that did not open is saved with all that was found, and cannot be moved', async () => {
    const salvaged = { recipes: [recipeRow('snow'), { id: 'rain', pleats: 4 }], ribbons: [{ id: 'r' }] };
    await openKeeping('/keeping', {
      openStorage: () =>
        Promise.resolve({ ok: false, fault: { kind: 'newer', detail: 'as told', salvaged } } as const),
    });
    const user = userEvent.setup();
    expect(await screen.findByText('One item can’t be opened.')).toBeVisible();
    expect(screen.queryByRole('button', { name: /Move to trash/ })).toBeNull();
    await press(user, 'Save a copy to a file');
    expect(JSON.parse(await saved[0]!.text())).toMatchObject({ stores: salvaged });
  });
});

describe('where it is kept', () => {
  test('says what the browser promised, and asks it when told to', async () => {
    let persisted = false;
    const { user } = await openKeeping('/keeping', {
      storageFacts: () => Promise.resolve({ persisted, usedBytes: 3_200_000, roomBytes: 12e9 }),
      askToPersist: () => {
        persisted = true;
        return Promise.resolve(true);
      },
    });
    expect(await screen.findByText(/^Not guaranteed/)).toBeVisible();
    expect(screen.getByText('About 3.2 MB of the 12 GB the browser allows.')).toBeVisible();
    expect(screen.getByText('2 boxes and 1 paper.')).toBeVisible();
    await press(user, 'Ask the browser to keep my work');
    expect(await screen.findByText('Yes. The browser has agreed not to clear your work.')).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Ask the browser to keep my work' })).toBeNull();
  });

  test('says so where the browser says nothing, and offers no folder where it has none', async () => {
    await openKeeping('/keeping');
    expect(await screen.findByText(/doesn’t say whether/)).toBeVisible();
    expect(await screen.findByText(/can’t save into a folder/)).toBeVisible();
    expect(screen.queryByRole('button', { name: /folder/i })).toBeNull();
  });
});

describe('copies outside', () => {
  test('a backup is made, its day and place are said', async () => {
    const { user } = await openKeeping('/keeping');
    expect(await screen.findByText('No backup yet.')).toBeVisible();
    await press(user, 'Back up everything');
    expect(await screen.findByText(/^Last backup: today at .*, file “crease-and-count-/)).toBeVisible();
    expect(await saved[0]!.text()).toContain('"kind": "everything"');
  });

  test('a backup is looked at before it is read in, and replaces nothing', async () => {
    const { workbook, user } = await openKeeping('/keeping');
    const backup = workbookOf('everything', {
      recipes: [recipeRow('snow', { name: 'Snow of last year' }), recipeRow('hail', { name: 'Hail' })],
      papers: [paperRow('p')],
    });
    await screen.findByRole('button', { name: 'Restore from a backup' });
    const chooser = document.querySelector<HTMLInputElement>('input[type=file]')!;
    await user.upload(chooser, [
      new File([writeWorkbook(backup)], 'old.json'),
      new File(['{"format":"elsewhere"}'], 'other.json'),
    ]);
    expect(await screen.findByRole('heading', { name: 'File 1 of 2, “old.json”' })).toBeVisible();
    expect(screen.getByText(/^1 differs: yours stay/)).toBeVisible();
    expect(screen.getByText('Snow of last year (box)')).toHaveTextContent('different name');
    expect(screen.getByText('Hail (box)')).toBeInTheDocument();
    expect(screen.getByText('1 already here')).toBeVisible();
    expect(workbook.getState().rows.recipes.size).toBe(2);
    await press(user, 'Import');
    const names = [...workbook.getState().rows.recipes.values()].map(({ name }) => name);
    expect(names.sort()).toEqual(['Hail', 'Recipe rain', 'Snow', 'Snow of last year']);
    expect(workbook.getState().rows.recipes.get('snow')?.name).toBe('Snow');

    expect(await screen.findByRole('heading', { name: 'File 2 of 2, “other.json”' })).toBeVisible();
    expect(screen.getByText(/We couldn’t open this file/)).toBeVisible();
    await press(user, 'Cancel');
    expect(screen.queryByRole('heading', { name: /File 2/ })).toBeNull();
  });

  test('a folder gets a copy by itself; trouble is said here and on the shelf', async () => {
    const door = new FolderDouble();
    const { user } = await openKeeping('/keeping', { folderDoor: () => Promise.resolve(door) });
    await press(user, 'Pick a folder');
    expect(await screen.findByText('Backups go to the folder “Boxes”.')).toBeVisible();
    expect((await screen.findAllByText(/^Last backup: today at/)).length).toBeGreaterThan(0);
    door.allowed = false;
    door.answer = false;
    await press(user, 'Back up now');
    expect(await screen.findByText(/needs your OK to save into “Boxes”/)).toBeVisible();
    await user.click(screen.getByRole('link', { name: 'Go to the shelf' }));
    expect(await screen.findByText('Automatic backup to “Boxes” needs your OK.')).toBeVisible();
    await user.click(screen.getByRole('link', { name: 'Open it' }));
    door.answer = true;
    await press(user, 'Allow it again');
    expect(await screen.findByRole('button', { name: 'Back up now' })).toBeVisible();
    expect(door.written).toHaveLength(2);
    await press(user, 'Stop automatic backup');
    expect(await screen.findByRole('button', { name: 'Pick a folder' })).toBeVisible();
  });
});

test('an earlier state is looked at and brought back beside the present', async () => {
  const { workbook, user } = await openKeeping('/keeping');
  expect(await screen.findByText('None yet. We save them as you work.')).toBeVisible();
  workbook.getState().edit('recipes', 'snow', 'Name', (row) => ({ ...row, name: 'Sleet' }));
  await workbook.getState().keepNow();
  await user.click(await screen.findByText('Sleet (box)'));
  const look = (await screen.findByText('Snow')).closest('li')!;
  expect(within(look).getByText('different name')).toBeVisible();
  await user.click(within(look).getByRole('button', { name: /^Restore as a copy, Snow,/ }));
  expect(await screen.findByText(/^“Snow, .*” is on the shelf.$/)).toBeVisible();
  const names = [...workbook.getState().rows.recipes.values()].map(({ name }) => name);
  expect(names).toContain('Sleet');
  expect(names.filter((name) => name.startsWith('Snow, '))).toHaveLength(1);
});

test('what lies in the bin goes back to the shelf', async () => {
  const { workbook, user } = await openKeeping('/keeping');
  workbook.getState().remove({ table: 'recipes', id: 'snow' });
  await workbook.getState().keepNow();
  await press(user, 'Restore, Snow (box)');
  expect(workbook.getState().rows.recipes.has('snow')).toBe(true);
});

test('everything is erased only when the words are typed; a backup is offered first', async () => {
  const { world, workbook, user } = await openKeeping('/keeping');
  await press(user, 'Erase everything in this browser');
  const erase = screen.getByRole('button', { name: 'Erase everything now' });
  expect(erase).toBeDisabled();
  expect(screen.getAllByRole('button', { name: 'Back up everything' })).toHaveLength(2);
  await user.type(screen.getByRole('textbox', { name: /^Type “erase everything”/ }), 'erase{Enter}');
  expect(workbook.getState().rows.recipes.size).toBe(2);
  await user.type(screen.getByRole('textbox', { name: /^Type “erase everything”/ }), ' Everything');
  await user.click(erase);
  expect(await screen.findByText('Everything in this browser is erased.')).toBeVisible();
  expect(workbook.getState().rows.recipes.size).toBe(0);
  expect(world.disk.contents.recipes.size).toBe(0);
});
