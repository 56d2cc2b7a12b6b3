import { mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { type Client, createClient, type InStatement } from '@libsql/client';
import { applyUpdate, type Doc, encodeStateAsUpdate, mergeUpdates } from 'yjs';

/** Changes wait so long for others, so that one write to the disk carries them all. Source: our own. */
const GATHER_MS = 5;
/** Nothing else is done while the disk writes: on a slow one, changes wait so many times as long as the last write took. Source: our own. */
const GATHER_TIMES = 4;
const LONGEST_TAKEN_MS = 50;

/** A server that starts waits so long for one that is still letting go of the file. Source: our own. */
const LOCKED_MS = 20_000;
const ASK_AGAIN_MS = 100;

/** So many changes of their own are folded into one state while a shelf is open, and when its last device has left. Source: our own. */
const FOLD_OPEN_AT = 500;
const FOLD_LEFT_AT = 20;

const TABLES: InStatement[] = [
  'CREATE TABLE IF NOT EXISTS shelf (id TEXT PRIMARY KEY, proof BLOB NOT NULL, state BLOB, stamp TEXT NOT NULL)',
  'CREATE TABLE IF NOT EXISTS change (seq INTEGER PRIMARY KEY AUTOINCREMENT, shelf TEXT NOT NULL, bytes BLOB NOT NULL)',
  'CREATE INDEX IF NOT EXISTS change_of ON change (shelf)',
];

/** What a loaded shelf was folded from: the stamp of its whole state, and the changes that it holds besides. */
interface Folded {
  stamp: string;
  readonly seqs: Set<number>;
  bytes: number;
}

interface Waiting {
  readonly shelf: string;
  readonly bytes: Uint8Array;
  readonly done: (error: Error | null) => void;
}

/**
 * Every shelf as the server has it: one state, and the changes that came since. A change is on the disk (write-ahead log, synchronous FULL)
 * before anybody is told that it was kept; several servers may stand on one database.
 */
export class ShelfFiles {
  readonly #client: Client;
  readonly #folded = new Map<string, Folded>();
  #waiting: Waiting[] = [];
  #writing: Promise<void> | null = null;
  #lastTookMs = 0;

  private constructor(client: Client) {
    this.#client = client;
  }

  static async open(data: string): Promise<ShelfFiles> {
    const isFile = !/^(libsql|https?|wss?):/.test(data);
    const path = data.replace(/^file:/, '');
    if (isFile && path !== ':memory:') mkdirSync(dirname(resolve(path)), { recursive: true });
    const client = createClient(isFile ? { url: `file:${path}`, timeout: 5000 } : { url: data });
    await whileLocked(async () => {
      if (isFile) {
        await client.execute('PRAGMA journal_mode = WAL');
        await client.execute('PRAGMA synchronous = FULL');
      }
      await client.batch(TABLES, 'write');
    });
    return new ShelfFiles(client);
  }

  /** What a caller must prove to open a shelf; null: there is no such shelf. */
  async proofOf(id: string): Promise<Uint8Array | null> {
    const { rows } = await this.#client.execute({ sql: 'SELECT proof FROM shelf WHERE id = ?', args: [id] });
    return bytesOf(rows[0]?.['proof']);
  }

  /** Makes a shelf, unless somebody was faster; what must be proven from now on. */
  async create(id: string, proof: Uint8Array): Promise<Uint8Array> {
    await this.#client.execute({
      sql: 'INSERT OR IGNORE INTO shelf (id, proof, state, stamp) VALUES (?, ?, NULL, ?)',
      args: [id, proof, ''],
    });
    return (await this.proofOf(id)) ?? proof;
  }

  /** Everything that was kept of a shelf; null: nothing yet. */
  async fetch(id: string): Promise<Uint8Array | null> {
    const [shelf, changes] = await this.#client.batch(
      [
        { sql: 'SELECT state, stamp FROM shelf WHERE id = ?', args: [id] },
        { sql: 'SELECT seq, bytes FROM change WHERE shelf = ? ORDER BY seq', args: [id] },
      ],
      'read',
    );
    const state = bytesOf(shelf?.rows[0]?.['state']);
    const since = (changes?.rows ?? []).map(({ seq, bytes }) => ({
      seq: Number(seq),
      bytes: bytesOf(bytes) ?? new Uint8Array(),
    }));
    const updates = [...(state ? [state] : []), ...since.map(({ bytes }) => bytes)];
    this.#folded.set(id, {
      stamp: textOf(shelf?.rows[0]?.['stamp']),
      seqs: new Set(since.map(({ seq }) => seq)),
      bytes: updates.reduce((sum, { length }) => sum + length, 0),
    });
    return updates.length > 0 ? mergeUpdates(updates) : null;
  }

  /** Bytes of a loaded shelf on the disk. */
  sizeOf = (id: string): number => this.#folded.get(id)?.bytes ?? 0;

  /** Keeps one change of a shelf; returns when it is on the disk. */
  keep(shelf: string, bytes: Uint8Array): Promise<void> {
    return new Promise((resolve, reject) => {
      this.#waiting.push({ shelf, bytes, done: (error) => (error ? reject(error) : resolve()) });
      this.#writing ??= this.#write();
    });
  }

  /**
   * Puts the whole state of a shelf in the place of the changes that it holds, where they are many: each of these writes holds up every other
   * shelf. `open`: devices are still at it.
   */
  async store(id: string, doc: Doc, open: boolean): Promise<void> {
    const folded = this.#folded.get(id);
    if (!folded || folded.seqs.size < (open ? FOLD_OPEN_AT : FOLD_LEFT_AT)) return;
    const state = encodeStateAsUpdate(doc);
    const seqs = [...folded.seqs];
    const stamp = crypto.randomUUID();
    const [put] = await this.#client.batch(
      [
        {
          sql: 'UPDATE shelf SET state = ?, stamp = ? WHERE id = ? AND stamp = ?',
          args: [state, stamp, id, folded.stamp],
        },
        {
          sql: 'DELETE FROM change WHERE seq IN (SELECT value FROM json_each(?)) AND (SELECT stamp FROM shelf WHERE id = ?) = ?',
          args: [JSON.stringify(seqs), id, stamp],
        },
      ],
      'write',
    );
    if (put?.rowsAffected === 1) {
      folded.stamp = stamp;
      folded.bytes = state.length;
      for (const seq of seqs) folded.seqs.delete(seq);
      return;
    }
    // Another server put its state there since. Nothing was taken away; with theirs in ours, it fits the next time.
    const theirs = await this.fetch(id);
    if (!theirs) return;
    applyUpdate(doc, theirs);
    await this.store(id, doc, open);
  }

  forget = (id: string): boolean => this.#folded.delete(id);

  async close(): Promise<void> {
    await this.#writing;
    this.#client.close();
  }

  async #write(): Promise<void> {
    while (this.#waiting.length > 0) {
      const pause = Math.max(GATHER_MS, GATHER_TIMES * this.#lastTookMs);
      await new Promise((resolve) => setTimeout(resolve, pause));
      const all = this.#waiting;
      this.#waiting = [];
      const began = performance.now();
      try {
        const written = await this.#client.batch(
          all.map(({ shelf, bytes }) => ({
            sql: 'INSERT INTO change (shelf, bytes) VALUES (?, ?)',
            args: [shelf, bytes],
          })),
          'write',
        );
        for (const [at, { shelf, bytes, done }] of all.entries()) {
          const folded = this.#folded.get(shelf);
          folded?.seqs.add(Number(written[at]?.lastInsertRowid));
          if (folded) folded.bytes += bytes.length;
          done(null);
        }
      } catch (error) {
        for (const { done } of all) done(error instanceof Error ? error : new Error(String(error)));
      }
      this.#lastTookMs = Math.min(LONGEST_TAKEN_MS, performance.now() - began);
    }
    this.#writing = null;
  }
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

const bytesOf = (value: unknown): Uint8Array | null =>
  value instanceof ArrayBuffer ? new Uint8Array(value) : value instanceof Uint8Array ? value : null;

/** Tries again while another holds the file: the change to a write-ahead log is refused at once, whatever time-out was asked for. */
async function whileLocked(act: () => Promise<void>): Promise<void> {
  for (const until = Date.now() + LOCKED_MS; ; ) {
    try {
      await act();
      return;
    } catch (error) {
      if (!/SQLITE_BUSY|database is locked/.test(String(error)) || Date.now() > until) throw error;
      await new Promise((resolve) => setTimeout(resolve, ASK_AGAIN_MS));
    }
  }
}
