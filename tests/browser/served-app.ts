import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const DIST = fileURLToPath(new URL('../../dist', import.meta.url));
const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
};

/** Every file of the build, as it is asked for. */
export const builtFiles = (): string[] =>
  readdirSync(DIST, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(DIST.length))
    .sort();

/** The built app on a server of its own, whose worker can be made a newer one, and which can be told to have lost a file. */
export async function serveApp() {
  let edition = 1;
  let lost: string | null = null;
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const path = normalize(new URL(request.url ?? '/', 'http://here').pathname);
    const file = path === '/' ? '/index.html' : path;
    asked.push(file);
    void (file === lost ? Promise.reject(new Error('lost')) : readFile(join(DIST, file))).then(
      (bytes) => {
        response.setHeader('Content-Type', KINDS[extname(file)] ?? 'application/octet-stream');
        response.setHeader('Cache-Control', 'no-cache');
        response.end(file === '/sw.js' ? `${bytes.toString()}\n// edition ${edition}` : bytes);
      },
      () => {
        response.statusCode = 404;
        response.end();
      },
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve()));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    publish: () => {
      edition += 1;
    },
    /** Every file as it was asked for, in order. */
    asked,
    /** From now on this file is not there; null: all are. */
    lose: (file: string | null) => {
      lost = file;
    },
    close: () =>
      new Promise<void>((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
