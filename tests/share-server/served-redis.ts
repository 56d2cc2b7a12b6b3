/** A Redis of the tests' own, where there is one; `install` puts it on a Debian system, if it runs as root, and does no more. */
import { execFileSync, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { freePort } from './served-share';

const PATHS = ['/usr/bin/redis-server', '/usr/local/bin/redis-server'];
const INSTALLS_WITHIN_MS = 120_000;

/** The path of the server; undefined where there is none. */
export const findRedis = (): string | undefined => PATHS.find((path) => existsSync(path));

export function installRedis(): void {
  if (findRedis() || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const words of [['update'], ['install', '-y', '--no-install-recommends', 'redis-server']])
    try {
      execFileSync('nice', ['-n', '19', 'apt-get', ...words], {
        stdio: 'ignore',
        timeout: INSTALLS_WITHIN_MS,
        env,
      });
    } catch {
      // What is missing is told where it is looked for.
    }
}

/** Starts one that keeps nothing on the disk. */
export async function startRedis(
  path: string,
  wanted?: number,
): Promise<{ readonly port: number; readonly stop: () => Promise<void> }> {
  const port = wanted ?? (await freePort());
  const words = ['--port', `${port}`, '--bind', '127.0.0.1', '--save', '', '--appendonly', 'no'];
  const child = spawn(path, words, { stdio: ['ignore', 'pipe', 'ignore'] });
  await new Promise<void>((resolve, reject) => {
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (/ready to accept connections/i.test(said)) resolve();
    });
    child.once('error', reject);
    child.once('exit', () => reject(new Error(`redis-server ended: ${said}`)));
  });
  return {
    port,
    stop: () =>
      new Promise((resolve) => {
        child.once('exit', () => resolve());
        child.kill('SIGKILL');
      }),
  };
}
