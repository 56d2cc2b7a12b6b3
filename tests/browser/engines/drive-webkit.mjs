/** WebKitGTK's own small browser, driven by its WebDriver (W3C WebDriver, level 2) on a screen that nobody sees. */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';

const LIBRARIES = ['/usr/lib/x86_64-linux-gnu', '/usr/lib/aarch64-linux-gnu', '/usr/lib'];
const DRIVER = '/usr/bin/WebKitWebDriver';
const SCREEN = '/usr/bin/Xvfb';
/** Longest wait for the screen and for the driver. */
const STARTS_WITHIN_MS = 15_000;

/** The path of the browser, or the reason why there is none. */
export function findWebKit() {
  for (const program of [DRIVER, SCREEN])
    if (!existsSync(program)) return { why: `${program} is not installed` };
  const path = LIBRARIES.filter((folder) => existsSync(folder))
    .flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.startsWith('webkit2gtk-'))
        .map((name) => join(folder, name, 'MiniBrowser')),
    )
    .find((browser) => existsSync(browser));
  return path ? { path } : { why: 'no MiniBrowser is installed' };
}

const freePort = () =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

function startScreen() {
  const screen = spawn(SCREEN, ['-displayfd', '3', '-screen', '0', '1440x900x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const number = new Promise((resolve, reject) => {
    screen.once('error', reject);
    screen.once('exit', () => reject(new Error('Xvfb ended')));
    screen.stdio[3].once('data', (said) => resolve(`${said}`.trim()));
    setTimeout(() => reject(new Error('Xvfb gave no screen')), STARTS_WITHIN_MS).unref();
  });
  return { screen, number };
}

/** A page in WebKit: `go` to an address, `evaluate` a function in it with arguments that JSON can say. */
export async function openWebKit({ path }) {
  const { screen, number } = startScreen();
  let driver;
  const stop = () => {
    driver?.kill();
    screen.kill();
  };
  try {
    const port = await freePort();
    const env = { ...process.env, DISPLAY: `:${await number}`, WEBKIT_DISABLE_COMPOSITING_MODE: '1' };
    driver = spawn(DRIVER, ['-p', `${port}`], { env, stdio: 'ignore' });
    driver.once('error', () => undefined);
    const call = async (method, address, body) => {
      const answer = await fetch(`http://127.0.0.1:${port}${address}`, {
        method,
        ...(body && { body: JSON.stringify(body) }),
        signal: AbortSignal.timeout(30_000),
      });
      const { value } = await answer.json();
      if (value?.error) throw new Error(`${value.error}: ${value.message}`);
      return value;
    };
    await answers(() => call('GET', '/status'));
    const options = { binary: path, args: ['--automation'] };
    const { sessionId, capabilities } = await call('POST', '/session', {
      capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': options } },
    });
    const session = `/session/${sessionId}`;
    return {
      version: `WebKitGTK ${capabilities.browserVersion}`,
      go: (url) => call('POST', `${session}/url`, { url }),
      reload: () => call('POST', `${session}/refresh`, {}),
      evaluate: (act, ...args) =>
        call('POST', `${session}/execute/sync`, { script: `return (${act}).apply(null, arguments)`, args }),
      close: async () => {
        await call('DELETE', session).catch(() => undefined);
        stop();
      },
    };
  } catch (error) {
    stop();
    throw error;
  }
}

async function answers(ask) {
  const until = Date.now() + STARTS_WITHIN_MS;
  for (;;)
    try {
      return await ask();
    } catch (error) {
      if (Date.now() > until) throw error;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
}
