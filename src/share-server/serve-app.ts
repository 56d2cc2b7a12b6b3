import { readdirSync, readFileSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { PAGE_HEADERS } from './page-headers';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};
const PACKED = ['.html', '.js', '.css', '.json', '.webmanifest', '.svg', '.ttf', '.wasm'];

interface Served {
  readonly headers: Readonly<Record<string, string>>;
  readonly plain: Buffer;
  readonly packed: Buffer | null;
}

/** Answers with the files of the built app, and with nothing else that lies on the machine: only names that were there at the start. */
export function serveApp(folder: string): (request: IncomingMessage, response: ServerResponse) => void {
  const names = new Set(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(folder.length).replaceAll('\\', '/')),
  );
  const read = new Map<string, Served>();
  const served = (name: string): Served => {
    const known = read.get(name);
    if (known) return known;
    const plain = readFileSync(join(folder, name));
    const kind = extname(name);
    const fresh = {
      headers: {
        ...PAGE_HEADERS,
        'Content-Type': KINDS[kind] ?? 'application/octet-stream',
        // The build names these by what they hold.
        'Cache-Control': name.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
        Vary: 'Accept-Encoding',
      },
      plain,
      packed: PACKED.includes(kind) ? gzipSync(plain) : null,
    };
    read.set(name, fresh);
    return fresh;
  };
  return (request, response) => {
    const path = (request.url ?? '/').replace(/[?#].*$/, '');
    const name = path === '/' ? '/index.html' : path;
    if ((request.method !== 'GET' && request.method !== 'HEAD') || !names.has(name)) {
      response.writeHead(404, PAGE_HEADERS).end();
      return;
    }
    const { headers, plain, packed } = served(name);
    const packs = packed !== null && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
    response.writeHead(200, { ...headers, ...(packs && { 'Content-Encoding': 'gzip' }) });
    response.end(request.method === 'HEAD' ? undefined : packs ? packed : plain);
  };
}
