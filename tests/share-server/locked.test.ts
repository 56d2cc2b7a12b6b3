import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createClient } from '@libsql/client';
import { expect, test } from 'vitest';
import { ShelfFiles } from '../../src/share-server/shelf-files';

test('a server that starts while another still holds the file waits for it', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'shelf-locked-'));
  const path = join(folder, 'shelves.db');
  try {
    const other = createClient({ url: `file:${path}` });
    await other.execute('CREATE TABLE made_before (id TEXT)');
    const held = await other.transaction('write');
    await held.execute("INSERT INTO made_before VALUES ('a')");
    const opening = ShelfFiles.open(path);
    await new Promise((resolve) => setTimeout(resolve, 700));
    await held.commit();
    other.close();
    const files = await opening;
    expect(await files.fetch('none')).toBeNull();
    await files.close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
