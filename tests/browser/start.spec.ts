import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from '@playwright/test';
import { recordFault } from './fault-record';

// What `npm start` does once the app is built, where there is nothing to open an address with.
test('on a machine without a browser the app starts, says its address, and prints no fault', async () => {
  const info = test.info();
  const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: { start: string } };
  const [, serve = ''] = scripts.start.split('&& vite ');
  const vite = join('node_modules', 'vite', 'bin', 'vite.js');
  const env = { PATH: dirname(process.execPath), HOME: info.outputDir, DISPLAY: '' };
  const server = spawn(process.execPath, [vite, ...serve.split(' '), '--port', '0'], { env });
  let said = '';
  for (const stream of [server.stdout, server.stderr])
    stream.on('data', (chunk: Buffer) => {
      said += chunk.toString();
    });
  try {
    await expect.poll(() => said, { timeout: 60_000 }).toMatch(/http:\/\/127\.0\.0\.1:\d+/);
    // Long enough for a browser that cannot be opened to be missed.
    await new Promise((resolve) => setTimeout(resolve, 1000));
    const faults = said.match(/^\s+at |error|ENOENT/gim) ?? [];
    recordFault(info, { fault: 'npm start without a browser', tries: 1, lost: faults.length, goal: 0 });
    expect(scripts.start).not.toContain('--open');
    expect(server.exitCode).toBeNull();
  } finally {
    server.kill();
  }
});
