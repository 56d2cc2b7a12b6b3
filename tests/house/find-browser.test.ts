import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';

const find = (sources: string, env: Record<string, string> = {}) =>
  spawnSync(process.execPath, ['tests/browser/find-browser.mjs', '--only', sources], {
    env: { ...process.env, PLAYWRIGHT_CHROMIUM: '', ...env },
    encoding: 'utf8',
  });

test('a program that is not a browser is not taken for one, and the reader is told what to install', () => {
  const found = find('environment', { PLAYWRIGHT_CHROMIUM: process.execPath });
  expect(found.status).toBe(1);
  expect(found.stderr).toContain(`environment: ${process.execPath} answers "v`);
  expect(found.stderr).toContain('apt-get install --no-install-recommends chromium');
});

test('a path that holds nothing is named among what was tried', () => {
  const found = find('environment', { PLAYWRIGHT_CHROMIUM: '/nowhere/chromium' });
  expect(found.status).toBe(1);
  expect(found.stderr).toContain('environment: /nowhere/chromium');
});
