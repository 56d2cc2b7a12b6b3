import { type ChildProcess, spawn } from 'node:child_process';
import { createHash, randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { HocuspocusProvider, HocuspocusProviderWebsocket } from '@hocuspocus/provider';
import { build } from 'vite';
import WebSocket from 'ws';
import * as Y from 'yjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** A share server in a process of its own, which can be killed outright. */
export class ServedShare {
  readonly port: number;
  /** Everything it printed. */
  said = '';
  readonly #child: ChildProcess;

  private constructor(child: ChildProcess, port: number, said: string) {
    this.#child = child;
    this.port = port;
    this.said = said;
    child.stdout?.on('data', (chunk: Buffer) => {
      this.said += chunk.toString();
    });
  }

  /** `bundle`: what `bundled` made, which starts faster than the source. */
  static start(env: Readonly<Record<string, string>>, bundle?: string): Promise<ServedShare> {
    const words = bundle ? [bundle] : ['--import', 'tsx', 'src/share-server/main.ts'];
    const child = spawn(process.execPath, words, {
      cwd: root,
      env: { ...process.env, SHARE_PORT: '0', ...env },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    return new Promise((resolve, reject) => {
      let said = '';
      const hear = (chunk: Buffer) => {
        said += chunk.toString();
        const [, here] = /devices: https?:\/\/[^:\s]+:(\d+)/.exec(said) ?? [];
        // Behind a proxy it tells the proxy's address.
        const port = here && (env['SHARE_PORT'] ?? here);
        if (!port) return;
        child.stdout.off('data', hear);
        resolve(new ServedShare(child, Number(port), said));
      };
      child.stdout.on('data', hear);
      child.once('exit', (code) => reject(new Error(`left ${code}: ${said}`)));
    });
  }

  /** Where a browser finds it. */
  get origin(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  get alive(): boolean {
    return this.#child.exitCode === null && this.#child.signalCode === null;
  }

  get pid(): number {
    return this.#child.pid ?? 0;
  }

  /** Ends it; `SIGKILL` leaves it no time for anything. Gives what it left with. */
  stop(signal: 'SIGTERM' | 'SIGKILL'): Promise<number | null> {
    if (!this.alive) return Promise.resolve(this.#child.exitCode);
    return new Promise((resolve) => {
      this.#child.once('exit', (code) => resolve(code));
      this.#child.kill(signal);
    });
  }
}

/** The share server in one file. */
export async function bundled(): Promise<string> {
  const folder = join(root, 'node_modules/.cache/share-server');
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    build: { ssr: 'src/share-server/main.ts', outDir: folder, emptyOutDir: true },
  });
  return join(folder, 'main.js');
}

/** A folder that is gone afterwards, with an app of one page in it. */
export function place() {
  const folder = mkdtempSync(join(tmpdir(), 'crease-share-'));
  mkdirSync(join(folder, 'app'));
  writeFileSync(join(folder, 'app/index.html'), '<!doctype html><title>app</title>');
  return {
    env: { SHARE_APP: join(folder, 'app'), SHARE_DATA: join(folder, 'data/shelves.db') },
    data: join(folder, 'data/shelves.db'),
    end: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** The name and the tokens of a new shelf. */
export function newShelf() {
  const secret = randomBytes(32);
  const reading = createHash('sha256').update(secret).digest();
  return {
    name: randomBytes(16).toString('base64url'),
    write: `w.${secret.toString('base64url')}`,
    read: `r.${reading.toString('base64url')}`,
  };
}

/** A plain connection, as a page at `origin` opens it. */
export const connect = (port: number, origin = `http://127.0.0.1:${port}`, path = '/exchange') =>
  new WebSocket(`ws://127.0.0.1:${port}${path}`, { origin });

/** A device: a document, what it was told is kept, and whether the door was shut to it. */
export interface Device {
  readonly doc: Y.Doc;
  readonly provider: HocuspocusProvider;
  /** The clock up to which the server keeps what this device wrote. */
  readonly kept: () => number;
  readonly refused: () => boolean;
  readonly leave: () => void;
}

/** `caller`: who asks, as a proxy in front would say. `secure`: the address of a proxy whose certificate nobody signed. */
export function device(
  port: number,
  name: string,
  token: string,
  { caller, secure }: { readonly caller?: string; readonly secure?: string } = {},
): Device {
  const origin = secure ?? `http://127.0.0.1:${port}`;
  class Socket extends WebSocket {
    constructor(address: string) {
      const headers = caller === undefined ? {} : { 'x-forwarded-for': caller };
      super(address, { origin, headers, rejectUnauthorized: false });
    }
  }
  const socket = new HocuspocusProviderWebsocket({
    url: `${origin.replace(/^http/, 'ws')}/exchange`,
    WebSocketPolyfill: Socket,
    autoConnect: false,
    maxAttempts: 1,
    // A line that breaks stays broken, so that a test sees what happened to it.
    onClose: () => socket.disconnect(),
  });
  void socket.connect().catch(() => undefined);
  const doc = new Y.Doc();
  let kept = 0;
  let refused = false;
  const provider = new HocuspocusProvider({
    websocketProvider: socket,
    name,
    token,
    document: doc,
    awareness: null,
    onStateless: ({ payload }) => {
      const told = JSON.parse(payload) as { kept: [number, number][] };
      for (const [client, clock] of told.kept) if (client === doc.clientID) kept = Math.max(kept, clock);
    },
    onAuthenticationFailed: () => {
      refused = true;
    },
  });
  provider.attach();
  return {
    doc,
    provider,
    kept: () => kept,
    refused: () => refused,
    leave() {
      provider.destroy();
      socket.destroy();
    },
  };
}

/** A port that nobody listens at. */
export const freePort = () =>
  new Promise<number>((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });

/** Waits for this. The time ends what hangs, not what is slow beside other work. */
export async function until(met: () => boolean, what: string, milliseconds = 60_000): Promise<void> {
  const end = Date.now() + milliseconds;
  while (!met()) {
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}
