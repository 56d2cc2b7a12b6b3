import { Redis } from '@hocuspocus/extension-redis';
import type { Document, Extension, onChangePayload } from '@hocuspocus/server';

/** A server that starts waits so long for Redis. Source: our own. */
const ANSWERS_WITHIN_MS = 10_000;

/**
 * Joins this server to its like. Redis carries what is written here to devices at the others, and no more: nothing waits for it, so that
 * while it is away each server keeps and acknowledges changes alone. When it is back, all that is open is compared once more.
 */
class JoinedServers extends Redis {
  constructor(redis: URL) {
    const { hostname, port, username, password, protocol } = redis;
    super({
      host: hostname,
      port: port ? Number(port) : 6379,
      options: {
        ...(username && { username: decodeURIComponent(username) }),
        ...(password && { password: decodeURIComponent(password) }),
        ...(protocol === 'rediss:' && { tls: {} }),
        // Commands stay queued until the line is up again, instead of failing.
        maxRetriesPerRequest: null,
      },
    });
    for (const line of [this.pub, this.sub]) {
      line.on('error', () => undefined);
      line.on('ready', () => this.#compareAll());
    }
  }

  /** Resolves when both lines are up; rejects where nobody answers. */
  async up(): Promise<void> {
    const ready = (line: Redis['pub']) =>
      new Promise<void>((resolve) => {
        if (line.status === 'ready') resolve();
        else line.once('ready', () => resolve());
      });
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<never>((_, reject) => {
      timer = setTimeout(
        () => reject(new Error('Redis does not answer. Start it, or leave out SHARE_REDIS.')),
        ANSWERS_WITHIN_MS,
      );
    });
    try {
      await Promise.race([Promise.all([ready(this.pub), ready(this.sub)]), late]);
    } catch (error) {
      await this.onDestroy();
      throw error;
    } finally {
      clearTimeout(timer);
    }
  }

  override afterLoadDocument(payload: Parameters<Redis['afterLoadDocument']>[0]): Promise<void> {
    void super.afterLoadDocument(payload).catch(() => undefined);
    return Promise.resolve();
  }

  override onChange(payload: onChangePayload): Promise<void> {
    // What is written while Redis is away is compared when it is back.
    if (this.pub.status === 'ready') void super.onChange(payload).catch(() => undefined);
    return Promise.resolve();
  }

  // The database itself settles who puts a whole state down (`ShelfFiles.store`); no lock is asked for.
  override onStoreDocument = (): Promise<void> => Promise.resolve();
  override afterStoreDocument = (): Promise<void> => Promise.resolve();

  override onDestroy(): Promise<void> {
    this.pub.disconnect();
    this.sub.disconnect();
    return Promise.resolve();
  }

  #compareAll(): void {
    // There is no server yet when the lines come up for the first time.
    const open = (this.instance as typeof this.instance | undefined)?.documents;
    for (const [documentName, document] of open ?? new Map<string, Document>())
      void this.onChange({ documentName, document, transactionOrigin: null } as onChangePayload);
  }
}

/** The extension that joins servers by this Redis, once it answers. */
export async function joinedBy(redis: URL): Promise<Extension> {
  const joined = new JoinedServers(redis);
  await joined.up();
  return joined;
}
