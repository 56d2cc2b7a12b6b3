import { expect, test } from 'vitest';
import { FILE_LIMITS } from '../../shared/read-workbook';
import { workbookOf, writeWorkbook } from '../../shared/write-workbook';
import { readPickedFile } from '../../src/state/intents/read-picked-file';

test('a picked file that is too large is refused before a byte of it is read', async () => {
  const picked = {
    size: FILE_LIMITS.backupBytes + 1,
    arrayBuffer: () => Promise.reject(new Error('read')),
  };
  expect(await readPickedFile(picked)).toMatchObject({ ok: false, refusals: [{ code: 'too-large' }] });
});

test('any other is read through all gates', async () => {
  const blob = new Blob([writeWorkbook(workbookOf('everything', {}))]);
  expect((await readPickedFile(blob)).ok).toBe(true);
  expect(await readPickedFile(new Blob(['[]']))).toMatchObject({ refusals: [{ code: 'not-a-workbook' }] });
});
