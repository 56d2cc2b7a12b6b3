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

/** Lays so many boxes and events beside what is there, each event with one of the boxes; run in a page, where the app has opened the database before. */
export async function layFullShelf({ boxes, events }: { boxes: number; events: number }): Promise<void> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open('crease-and-count');
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error('not opened'));
  });
  const tx = db.transaction(['recipes', 'events', 'notes'], 'readwrite');
  const row = (id: string, name: string, index: number) => ({
    id,
    rev: 1,
    createdAt: '2026-01-10T09:00:00.000Z',
    changedAt: new Date(Date.UTC(2026, 0, 12) + index * 60_000).toISOString(),
    name,
  });
  for (let index = 0; index < boxes; index++)
    tx.objectStore('recipes').put({
      ...row(`box-${index}`, `Season ${index}`, index),
      styleId: ['open-top', 'tray', 'straight-tuck', 'pillow-pack'][index % 4],
      sizesMm: {},
      options: {},
      caliperUm: 300,
      paperId: null,
      faceUp: 'inside',
      grain: 'upright',
      dressings: [],
      notes: '',
    });
  for (let index = 0; index < events; index++)
    tx.objectStore('events').put({
      ...row(`event-${index}`, `Party ${index}`, index),
      date: '2027-03-20',
      spares: { percent: 10, atLeast: 2 },
      lines: [{ id: 'line', recipeId: `box-${index}`, dressingId: null, paperId: null, count: 40 }],
      tapeId: null,
      currency: 'USD',
      notes: '',
    });
  type Census = { generation: number; rows: number; revSum: number };
  const census = await new Promise<Census>((resolve) => {
    const asked = tx.objectStore('notes').get('census');
    asked.onsuccess = () =>
      resolve(
        (asked.result as { value: Census } | undefined)?.value ?? { generation: 1, rows: 0, revSum: 0 },
      );
  });
  tx.objectStore('notes').put({
    id: 'census',
    rev: 1,
    value: {
      generation: census.generation + 1,
      rows: census.rows + boxes + events,
      revSum: census.revSum + boxes + events,
    },
  });
  await new Promise<void>((resolve) => {
    tx.oncomplete = () => resolve();
  });
  db.close();
}

/** From now on holds the database for so long at a time, and lets others in between; run in a page. */
export async function keepBusy(milliseconds: number): Promise<void> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open('crease-and-count');
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error('not opened'));
  });
  const burst = () => {
    const tx = db.transaction([...db.objectStoreNames], 'readwrite');
    const end = Date.now() + milliseconds;
    const again = () => {
      if (Date.now() < end) tx.objectStore('notes').get('nothing').onsuccess = again;
    };
    again();
    tx.oncomplete = () => setTimeout(burst, 5);
  };
  burst();
}
