import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

const root = fileURLToPath(new URL('../..', import.meta.url));
const found = `${root}/node_modules/.cache/browser.json`;
if (!existsSync(found))
  throw new Error('No browser chosen yet: run `node tests/browser/find-browser.mjs` once.');
const browser = JSON.parse(readFileSync(found, 'utf8')) as { path: string; env: Record<string, string> };

const port = process.env['PREVIEW_PORT'] ?? '4173';
const baseURL = `http://127.0.0.1:${port}`;

/** Every spec runs at a desk; one tagged `@phone` or `@tablet` runs in that hand as well. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: `${root}/test-results`,
  workers: 2,
  fullyParallel: true,
  forbidOnly: process.env['CI'] !== undefined,
  // A browser on a busy machine may be late once. What passed at the second try is counted apart; a fault that lost work fails either way.
  retries: process.env['CI'] === undefined ? 0 : 1,
  // What is timed has limits of its own; these only end what hangs, on the slowest machine that runs the gate.
  timeout: 300_000,
  expect: { timeout: 40_000 },
  reporter: [['list']],
  use: {
    baseURL,
    acceptDownloads: true,
    serviceWorkers: 'block',
    // A recording costs a third of the processor time of a spec: in the gate only a second try is recorded.
    trace: process.env['CI'] === undefined ? 'retain-on-failure' : 'on-first-retry',
    launchOptions: {
      executablePath: browser.path,
      env: { ...(process.env as Record<string, string>), ...browser.env },
      chromiumSandbox: false,
      args: [
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: [
    { name: 'desktop', use: { viewport: { width: 1440, height: 900 } } },
    { name: 'tablet', grep: /@tablet/, use: { viewport: { width: 820, height: 1180 }, hasTouch: true } },
    {
      name: 'phone',
      grep: /@phone/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 },
    },
  ],
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${port} --strictPort`,
    cwd: root,
    url: baseURL,
    reuseExistingServer: true,
  },
});
