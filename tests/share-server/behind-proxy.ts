/**
 * The server behind the proxy that README shows: the very lines of README, with the names of this test in them, a certificate made here and
 * nginx where it is installed. Says a line and leaves 0; where there is no nginx or no openssl the line says that this was skipped.
 */
import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import WebSocket from 'ws';
import { device, freePort, newShelf, place, ServedShare, until } from './served-share';

const NGINX = '/usr/sbin/nginx';
const OPENSSL = '/usr/bin/openssl';
const readme = readFileSync(fileURLToPath(new URL('../../README.md', import.meta.url)), 'utf8');

/** The lines between two fences of README that hold this text. */
function linesWith(text: string): string {
  const found = readme.split('```').find((block, at) => at % 2 === 1 && block.includes(text));
  if (!found) throw new Error(`README has no lines with ${text}`);
  return found;
}

/** A page through the proxy. */
const page = (address: string): Promise<{ status: number; text: string; policy: string }> =>
  new Promise((resolve, reject) => {
    get(address, { rejectUnauthorized: false }, (answer) => {
      let text = '';
      answer.on('data', (chunk: Buffer) => {
        text += chunk.toString();
      });
      const policy = String(answer.headers['content-security-policy']);
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, text, policy }));
    }).on('error', reject);
  });

async function tryProxy(): Promise<string> {
  const here = place();
  const folder = mkdtempSync(join(tmpdir(), 'crease-proxy-'));
  mkdirSync(join(folder, 'logs'));
  const [listens, behind] = [await freePort(), await freePort()];
  const origin = `https://localhost:${listens}`;
  const settings = { SHARE_PORT: `${behind}`, SHARE_ORIGIN: origin, SHARE_PROXY: '1' };
  const words = 'req -x509 -newkey rsa:2048 -nodes -days 2 -subj /CN=localhost -keyout key.pem -out cert.pem';
  execFileSync(OPENSSL, words.split(' '), { cwd: folder, stdio: 'ignore' });
  const lines = linesWith('proxy_pass')
    .replace('listen 443 ssl', `listen 127.0.0.1:${listens} ssl`)
    .replace('boxes.example.org;', 'localhost;')
    .replaceAll(/\/etc\/ssl\/boxes\//g, `${folder}/`)
    .replace('127.0.0.1:4180', `127.0.0.1:${behind}`);
  const places = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi']
    .map((name) => `${name}_temp_path ${folder}/${name};`)
    .join(' ');
  const conf = join(folder, 'nginx.conf');
  writeFileSync(
    conf,
    `daemon off; pid ${folder}/pid; events {} http { access_log ${folder}/logs/access.log; ${places}\n${lines}\n}`,
  );
  const server = await ServedShare.start({ ...here.env, ...settings });
  const proxy = spawn(NGINX, ['-p', folder, '-c', conf, '-e', join(folder, 'logs/error.log')], {
    stdio: 'ignore',
  });
  const left = new Promise((resolve) => proxy.once('exit', resolve));
  const opened: (() => void)[] = [];
  try {
    let shown: Awaited<ReturnType<typeof page>> | null = null;
    const end = Date.now() + 10_000;
    while (!shown && Date.now() < end)
      shown = await page(`${origin}/`).catch(() => new Promise((resolve) => setTimeout(resolve, 50, null)));
    if (!shown?.text.includes('<title>app</title>')) throw new Error('no page came through the proxy');
    if (!shown.policy.includes("frame-ancestors 'none'")) throw new Error('headers were lost in the proxy');
    const shelf = newShelf();
    const both = [0, 1].map(() => device(0, shelf.name, shelf.write, { secure: origin }));
    opened.push(...both.map(({ leave }) => leave));
    const [a, b] = both;
    if (!a || !b) throw new Error('no devices');
    await until(() => a.provider.synced && b.provider.synced, 'joined through the proxy');
    // As large as a photo, in one message.
    a.doc.getMap('sealed').set('photo', new Uint8Array(1_500_000));
    await until(() => b.doc.getMap('sealed').has('photo') && a.kept() > 0, 'a photo went through');
    const shut = await new Promise<boolean>((resolve) => {
      const line = new WebSocket(`wss://localhost:${listens}/exchange`, {
        origin: 'https://elsewhere.example',
        rejectUnauthorized: false,
      });
      line.once('open', () => resolve(false));
      line.once('error', () => resolve(true));
    });
    if (!shut) throw new Error('a page of another origin came through the proxy');
    const logged = readFileSync(join(folder, 'logs/access.log'), 'utf8') + server.said;
    if (logged.includes(shelf.name)) throw new Error('the name of a shelf was written down');
    return 'page, headers and exchange come through the lines of README, a photo too; pages of other origins do not';
  } finally {
    for (const leave of opened) leave();
    proxy.kill('SIGTERM');
    await Promise.all([server.stop('SIGTERM'), left]);
    rmSync(folder, { recursive: true, force: true });
    here.end();
  }
}

const missing = [NGINX, OPENSSL].filter((path) => !existsSync(path));
process.stdout.write(
  missing.length === 0 ? await tryProxy() : `skipped: there is no ${missing.join(' and ')}`,
);
process.exit(0);
