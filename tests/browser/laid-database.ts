/** A page of the same address without the app, to lay or read a database beside it. */
export const bare = (origin: string) => new URL('mark.svg', origin).href;

/** Names and sizes of all recipes kept, as the browser has them; run in a page. */
export async function keptWidths(): Promise<
  { name: string; width: number | undefined; depth: number | undefined }[]
> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open('crease-and-count');
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error('not opened'));
  });
  const rows = await new Promise<{ name: string; sizesMm: Record<string, number> }[]>((resolve) => {
    const asked = db.transaction('recipes').objectStore('recipes').getAll();
    asked.onsuccess = () => resolve(asked.result as never);
  });
  db.close();
  return rows.map(({ name, sizesMm }) => ({ name, width: sizesMm['width'], depth: sizesMm['depth'] }));
}

/** Lays the database as the first version left it; run in a page. */
export async function layVersionOne(rows: number): Promise<void> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open('crease-and-count', 10);
    asked.onupgradeneeded = () => {
      for (const name of ['recipes', 'events', 'papers', 'supplies', 'tools', 'bin', 'notes'])
        asked.result.createObjectStore(name, { keyPath: 'id' });
      asked.result.createObjectStore('snapshots', { keyPath: 'id' }).createIndex('of', 'of');
    };
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error('not opened'));
  });
  const tx = db.transaction(['recipes', 'notes'], 'readwrite');
  for (let index = 0; index < rows; index++)
    tx.objectStore('recipes').put({
      id: `r-${index}`,
      rev: 1,
      createdAt: '2026-01-10T09:00:00.000Z',
      changedAt: '2026-01-12T18:30:00.000Z',
      name: `Kept ${index}`,
      styleId: 'open-top',
      sizesMm: {},
      options: {},
      caliperUm: 300,
      paperId: null,
      faceUp: 'inside',
      grain: 'upright',
      dressings: [],
      notes: '',
    });
  tx.objectStore('notes').put({ id: 'census', value: { generation: 1, rows, revSum: rows } });
  await new Promise<void>((resolve) => {
    tx.oncomplete = () => resolve();
  });
  db.close();
}

/** Its version and how many recipes it holds; run in a page. */
export async function readBack(): Promise<{ version: number; rows: number }> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open('crease-and-count');
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error('not opened'));
  });
  const rows = await new Promise<number>((resolve) => {
    const asked = db.transaction('recipes').objectStore('recipes').count();
    asked.onsuccess = () => resolve(asked.result);
  });
  const { version } = db;
  db.close();
  return { version, rows };
}

export async function clearAll(): Promise<void> {
  localStorage.clear();
  await new Promise<void>((resolve) => {
    indexedDB.deleteDatabase('crease-and-count').onsuccess = () => resolve();
  });
}
