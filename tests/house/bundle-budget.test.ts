import { spawnSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'budget-'));
  mkdirSync(join(folder, 'assets'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const put = (name: string, text: string) => {
  writeFileSync(join(folder, name), text);
};
const weigh = (limit: number) =>
  spawnSync(process.execPath, ['tests/bundle-budget.mjs', folder, String(limit)], { encoding: 'utf8' });

/** Hexadecimal noise of 40,000 digits gzips to about half its length, 20 kB and a little: four bits a digit. */
const noise = `/*${randomBytes(20_000).toString('hex')}*/`;

test('what the first page imports at once is counted through its files; what waits for a click is not', () => {
  put('index.html', '<script type="module" crossorigin src="./assets/a.js"></script>');
  put('assets/a.js', `import{x}from"./b.js";const later=()=>import("./c.js");`);
  put('assets/b.js', noise);
  put('assets/c.js', noise);
  const weighed = weigh(30);
  expect(weighed.stdout).toContain('in 2 files');
  expect(weighed.status).toBe(0);
});

test('a first page over its limit fails and names the files', () => {
  put('index.html', '<link rel="modulepreload" href="./assets/b.js"><script src="./assets/a.js"></script>');
  put('assets/a.js', '');
  put('assets/b.js', noise);
  const weighed = weigh(10);
  expect(weighed.status).toBe(1);
  expect(weighed.stderr).toContain('assets/b.js');
});

test('a page without a script is a broken build, not a light one', () => {
  put('index.html', '<p>nothing</p>');
  expect(weigh(180).status).toBe(1);
});
