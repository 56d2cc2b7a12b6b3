/** The system's Firefox without a screen, driven by WebDriver BiDi: the few commands of it that a page needs, which older editions know too. */
import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import WebSocket from 'ws';

/** Longest wait for the browser, and for one answer of it. */
const ANSWERS_WITHIN_MS = 30_000;

/** The path of the browser, or the reason why there is none. */
export function findFirefox() {
  const path = ['/usr/bin/firefox-esr', '/usr/bin/firefox'].find((each) => existsSync(each));
  return path ? { path } : { why: 'no firefox is installed' };
}

const within = (promise, what) =>
  Promise.race([
    promise,
    new Promise((_, reject) => {
      setTimeout(
        () => reject(new DOMException(`${what}: no answer in ${ANSWERS_WITHIN_MS / 1000} s`, 'TimeoutError')),
        ANSWERS_WITHIN_MS,
      ).unref();
    }),
  ]);

/** The address at which it takes commands, which it says when it is up. */
const addressOf = (browser) =>
  new Promise((resolve, reject) => {
    let said = '';
    browser.stderr.on('data', (chunk) => {
      said += chunk;
      const [, address] = /WebDriver BiDi listening on (ws:\S+)/.exec(said) ?? [];
      if (address) resolve(address);
    });
    browser.once('error', reject);
    browser.once('exit', () => reject(new Error('it ended')));
  });

async function connect(address) {
  const socket = new WebSocket(`${address}/session`);
  await within(
    new Promise((resolve, reject) => {
      socket.once('open', resolve);
      socket.once('error', reject);
    }),
    'connection',
  );
  const waiting = new Map();
  socket.on('message', (text) => {
    const { id, type, result, message } = JSON.parse(text);
    const asked = waiting.get(id);
    waiting.delete(id);
    if (type === 'error') asked?.reject(new Error(message));
    else asked?.resolve(result);
  });
  let id = 0;
  const call = (method, params) =>
    within(
      new Promise((resolve, reject) => {
        waiting.set(++id, { resolve, reject });
        socket.send(JSON.stringify({ id, method, params }));
      }),
      method,
    );
  return { call, end: () => socket.terminate() };
}

/** A page in Firefox: `go` to an address, `evaluate` a function in it with strings. */
export async function openFirefox({ path }) {
  const version = execFileSync(path, ['--version'], { encoding: 'utf8', timeout: 20_000 }).trim();
  const profile = mkdtempSync(join(tmpdir(), 'firefox-'));
  const browser = spawn(path, ['--headless', '--remote-debugging-port', '0', '--profile', profile], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let line;
  const close = async () => {
    line?.end();
    const ended = new Promise((resolve) => browser.once('exit', resolve));
    if (browser.exitCode === null && browser.kill()) await ended;
    rmSync(profile, { recursive: true, force: true });
  };
  try {
    line = await connect(await within(addressOf(browser), 'start'));
    await line.call('session.new', { capabilities: {} });
    const { contexts } = await line.call('browsingContext.getTree', {});
    const { context } = contexts[0];
    return {
      version,
      go: (url) => line.call('browsingContext.navigate', { context, url, wait: 'complete' }),
      reload: () => line.call('browsingContext.reload', { context, wait: 'complete' }),
      evaluate: async (act, ...args) => {
        const answer = await line.call('script.callFunction', {
          functionDeclaration: `${act}`,
          arguments: args.map((value) => ({ type: 'string', value })),
          target: { context },
          awaitPromise: true,
        });
        if (answer.type === 'exception') throw new Error(answer.exceptionDetails.text);
        return answer.result.value;
      },
      close,
    };
  } catch (error) {
    await close();
    throw error;
  }
}
