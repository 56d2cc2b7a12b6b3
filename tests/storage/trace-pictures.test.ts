import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import type { TracePicture } from '../../src/core/trace';
import { openTraces } from '../../src/storage/trace-pictures';

const picture = (byte: number): TracePicture => ({
  bytes: new Uint8Array([byte]).buffer,
  type: 'image/png',
  widthPx: 3,
  heightPx: 2,
  place: { middle: [1, 2], mmPerPx: 0.5, turnDeg: 0, strength: 0.3, shown: true },
});

test('a picture is kept for its box, replaced, dropped, and all of them at once', async () => {
  const traces = openTraces(() => 1, 'traces-a');
  expect(await traces.read('box')).toBeNull();
  await traces.keep('box', picture(1));
  await traces.keep('other', picture(2));
  await traces.keep('box', { ...picture(3), place: { ...picture(3).place, turnDeg: 90 } });
  const found = await openTraces(() => 2, 'traces-a').read('box');
  expect(found && [...new Uint8Array(found.bytes)]).toEqual([3]);
  expect(found?.place.turnDeg).toBe(90);
  await traces.drop('box');
  expect(await traces.read('box')).toBeNull();
  expect(await traces.read('other')).not.toBeNull();
  await traces.dropAll();
  expect(await traces.read('other')).toBeNull();
});

test('of more than twenty, the one laid longest ago goes', async () => {
  let now = 0;
  const traces = openTraces(() => ++now, 'traces-b');
  for (let box = 1; box <= 20; box++) await traces.keep(`box-${box}`, picture(box));
  await traces.keep('box-1', picture(1));
  await traces.keep('box-21', picture(21));
  expect(await traces.read('box-2')).toBeNull();
  for (const id of ['box-1', 'box-3', 'box-21']) expect(await traces.read(id)).not.toBeNull();
});
