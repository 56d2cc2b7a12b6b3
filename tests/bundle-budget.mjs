/**
 * How much script a maker waits for before the first page stands: the entry of index.html and everything it imports at once, gzipped.
 * `node tests/bundle-budget.mjs [FOLDER] [LIMIT_KB]` prints the sum and leaves 1 if it is over; the folder is `dist` and the limit 150
 * where they are left out.
 */
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';

const given = process.argv.slice(2);
const isNumber = (word) => Number.isFinite(Number(word));
const limit = given.find(isNumber) ?? '150';
const folder = given.find((word) => !isNumber(word)) ?? 'dist';
const page = readFileSync(join(folder, 'index.html'), 'utf8');
const waiting = [...page.matchAll(/<(?:script|link)\b[^>]*?(?:src|href)="([^"]+\.js)"/g)].map(([, name]) =>
  posix.normalize(name),
);

const sizes = new Map();
while (waiting.length > 0) {
  const name = waiting.pop();
  if (sizes.has(name)) continue;
  const text = readFileSync(join(folder, name), 'utf8');
  sizes.set(name, gzipSync(text, { level: 9 }).length);
  // `import{a}from"./b.js"`, `import"./b.js"`, `export*from"./b.js"`; never `import("./b.js")`, which waits until it is needed.
  for (const [, next] of text.matchAll(/(?:\bfrom|\bimport)\s*["'](\.[^"']+\.js)["']/g))
    waiting.push(posix.join(posix.dirname(name), next));
}

const kb = [...sizes.values()].reduce((sum, size) => sum + size, 0) / 1000;
const fits = sizes.size > 0 && kb <= Number(limit);
console.log(`first script ${kb.toFixed(1)} kB gzipped in ${sizes.size} files, limit ${limit} kB`);
if (sizes.size === 0) console.error('index.html names no script');
if (!fits) for (const [name, size] of sizes) console.error(`  ${name} ${(size / 1000).toFixed(1)} kB`);
process.exit(fits ? 0 : 1);
