/**
 * The main job in the engines of other browsers, where they can be had. `--install` puts them on a Debian system, if it runs as root, and does
 * no more. An engine that is not there, does not start, or is too slow on a busy machine is skipped in a plain line; one in which the job fails
 * twice fails the run.
 */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { preview } from 'vite';
import { findFirefox, openFirefox } from './engines/drive-firefox.mjs';
import { findWebKit, openWebKit } from './engines/drive-webkit.mjs';
import { doMainJob, TooSlow } from './engines/main-job.mjs';

const ENGINES = [
  { name: 'Firefox', find: findFirefox, open: openFirefox },
  { name: 'WebKit', find: findWebKit, open: openWebKit },
];
const PACKAGES = ['firefox-esr', 'webkit2gtk-driver', 'xvfb'];
const INSTALLS_WITHIN_MS = 240_000;

function install() {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  const end = Date.now() + INSTALLS_WITHIN_MS;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  // One by one, so that one that cannot be had keeps no other away; at the lowest priority, since other tests run beside it.
  for (const words of [
    ['update'],
    ...PACKAGES.map((name) => ['install', '-y', '--no-install-recommends', name]),
  ])
    try {
      const timeout = Math.max(1, end - Date.now());
      execFileSync('nice', ['-n', '19', 'apt-get', ...words], { stdio: 'ignore', timeout, env });
    } catch {
      // What is missing is told where it is looked for.
    }
}

/** A page in this engine that can show a file of the app at all; the rest is for the job to tell. */
async function start({ find, open }, origin) {
  const found = find();
  if (!found.path) throw new Error(found.why);
  const page = await open(found);
  try {
    await page.go(`${origin}/mark.svg`);
    await page.evaluate(() => document.documentElement.tagName);
    return page;
  } catch (error) {
    await page.close().catch(() => undefined);
    throw error;
  }
}

async function tryEngine(engine, origin) {
  let failed = null;
  for (let attempt = 1; attempt <= 2; attempt++) {
    const began = performance.now();
    let page;
    try {
      page = await start(engine, origin);
    } catch (error) {
      return `skipped: ${error.message.split('\n')[0]}`;
    }
    try {
      await doMainJob(page, origin);
      const seconds = ((performance.now() - began) / 1000).toFixed(1);
      return `${page.version} does the main job (${seconds} s${failed ? `; at the first try it failed at “${failed.message}”` : ''})`;
    } catch (error) {
      if (error instanceof TooSlow || error.name === 'TimeoutError')
        return `skipped: the machine is too busy (${error.message})`;
      failed = error;
    } finally {
      await page.close().catch(() => undefined);
    }
  }
  throw failed;
}

if (process.argv.includes('--install')) install();
else {
  const server = await preview({ preview: { host: '127.0.0.1', port: 4300 }, logLevel: 'silent' });
  const origin = server.resolvedUrls.local[0].replace(/\/$/, '');
  for (const engine of ENGINES)
    try {
      console.log(`${engine.name}: ${await tryEngine(engine, origin)}`);
    } catch (error) {
      console.log(`${engine.name}: fails at “${error.message}”`);
      process.exitCode = 1;
    }
  await new Promise((resolve) => server.httpServer.close(resolve));
  process.exit();
}
