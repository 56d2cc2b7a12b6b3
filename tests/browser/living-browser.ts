import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from '@playwright/test';

const found = JSON.parse(
  readFileSync(fileURLToPath(new URL('../../node_modules/.cache/browser.json', import.meta.url)), 'utf8'),
) as { path: string; env: Record<string, string> };

/** Only Linux lists its processes in a folder; elsewhere the specs that kill a browser say that they were left out. */
export const canKill = process.platform === 'linux';

/** A browser with a profile on disk that can be killed outright, looked into, and started again. */
export class LivingBrowser {
  readonly profile = mkdtempSync(join(tmpdir(), 'crease-profile-'));
  #context: BrowserContext | null = null;

  async start(): Promise<Page> {
    this.#context = await chromium.launchPersistentContext(this.profile, {
      executablePath: found.path,
      env: { ...(process.env as Record<string, string>), ...found.env },
      chromiumSandbox: false,
      serviceWorkers: 'block',
      viewport: { width: 1280, height: 900 },
      args: ['--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-sync'],
    });
    return this.#context.pages()[0] ?? this.#context.newPage();
  }

  /** SIGKILL to every process of this profile: nothing gets the chance to finish what it was writing. */
  async kill(): Promise<void> {
    const closed = this.#context?.waitForEvent('close').catch(() => undefined);
    for (const pid of processesOf(this.profile)) {
      try {
        process.kill(pid, 'SIGKILL');
      } catch {
        // It went by itself, as children do when the first of them is gone.
      }
    }
    await closed;
    this.#context = null;
    // The lock of a killed browser stays behind and would stop the next one.
    for (const name of ['SingletonLock', 'SingletonCookie', 'SingletonSocket'])
      rmSync(join(this.profile, name), { force: true });
  }

  async stop(): Promise<void> {
    await this.#context?.close();
    this.#context = null;
  }

  /** Another browser with a copy of this one's profile as it lies on disk. */
  twin(): LivingBrowser {
    const twin = new LivingBrowser();
    cpSync(this.profile, twin.profile, { recursive: true });
    return twin;
  }

  async end(): Promise<void> {
    await this.stop().catch(() => undefined);
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 });
  }

  /** Files of the database as they lie on disk, newest name last. */
  databaseFiles(kind: RegExp): string[] {
    const folder = join(this.profile, 'Default', 'IndexedDB');
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && kind.test(entry.name) && entry.parentPath.endsWith('.leveldb'))
      .map((entry) => join(entry.parentPath, entry.name))
      .sort();
  }
}

const processesOf = (profile: string): number[] =>
  readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .filter((name) => {
      try {
        return readFileSync(`/proc/${name}/cmdline`, 'utf8').includes(`--user-data-dir=${profile}`);
      } catch {
        return false;
      }
    })
    .map(Number);
