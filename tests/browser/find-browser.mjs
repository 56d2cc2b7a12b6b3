/**
 * Finds a Chromium that runs on this machine and writes it to node_modules/.cache/browser.json, which playwright.config.ts reads.
 * The one shipped in a package stands before the system's: the same version everywhere, and quicker.
 * `--only NAME,…` tries just those sources. Leaves 1 with the list of what was tried if none answers.
 */
import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const modules = fileURLToPath(new URL('../../node_modules', import.meta.url));
const cache = join(modules, '.cache');

/** The version a browser answers with, or the reason it is none. */
function ask(path, env) {
  try {
    accessSync(path, constants.X_OK);
    const options = { env: { ...process.env, ...env }, timeout: 30_000, encoding: 'utf8', stdio: 'pipe' };
    const answer = execFileSync(path, ['--version'], options).trim();
    return /chrom/i.test(answer) ? { version: answer } : { why: `${path} answers "${answer}"` };
  } catch (error) {
    return {
      why: `${path}: ${
        String(error.stderr || error.message)
          .trim()
          .split('\n')[0]
      }`,
    };
  }
}

const onPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((path) => existsSync(path));

/** Unpacks the packaged Chromium once. It always unpacks into the temporary folder, so it is given one of its own. */
function unpack() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return { why: 'made for Linux on x64 only' };
  const manifest = join(modules, '@sparticuz/chromium/package.json');
  if (!existsSync(manifest)) return { why: 'the package is not installed' };
  const home = join(cache, `chromium-${JSON.parse(readFileSync(manifest, 'utf8')).version}`);
  mkdirSync(home, { recursive: true });
  // The name of this execution environment makes the package unpack its own NSS and expat libraries as well.
  const env = {
    ...process.env,
    TMPDIR: home,
    AWS_EXECUTION_ENV: `AWS_Lambda_nodejs${process.versions.node.split('.')[0]}.x`,
  };
  const script = "import('@sparticuz/chromium').then((it) => it.default.executablePath()).then(console.log)";
  const path = execFileSync(process.execPath, ['-e', script], {
    cwd: modules,
    env,
    timeout: 120_000,
    encoding: 'utf8',
  }).trim();
  const fonts = existsSync('/etc/fonts/fonts.conf') ? {} : { FONTCONFIG_PATH: join(home, 'fonts') };
  if (ask(path, fonts).version) return { path, env: fonts };
  return { path, env: { ...fonts, LD_LIBRARY_PATH: join(home, 'al2023/lib') } };
}

function install() {
  if (process.getuid?.() !== 0 || !onPath('apt-get')) return { why: 'needs to be root on a Debian system' };
  const apt = (...words) => execFileSync('apt-get', words, { stdio: 'pipe', timeout: 300_000 });
  apt('update');
  apt('install', '-y', '--no-install-recommends', 'chromium');
  return { path: onPath('chromium') };
}

const SYSTEM = [
  ...['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome']
    .map(onPath)
    .filter(Boolean),
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
].filter((path) => existsSync(path));

/** Where to look, in order. Each gives a path, or the reason why there is none. */
const SOURCES = [
  {
    name: 'environment',
    look: () => [
      process.env.PLAYWRIGHT_CHROMIUM
        ? { path: process.env.PLAYWRIGHT_CHROMIUM }
        : { why: 'PLAYWRIGHT_CHROMIUM is not set' },
    ],
  },
  {
    name: 'playwright',
    look: async () => [{ path: (await import('@playwright/test')).chromium.executablePath() }],
  },
  { name: 'package', look: () => [unpack()] },
  {
    name: 'system',
    look: () =>
      SYSTEM.length ? SYSTEM.map((path) => ({ path })) : [{ why: 'no chromium or chrome on this machine' }],
  },
  { name: 'apt', look: () => [install()] },
];

const only = process.argv[process.argv.indexOf('--only') + 1]?.split(',');
const tried = [];
for (const source of SOURCES.filter(({ name }) => !process.argv.includes('--only') || only?.includes(name))) {
  let found;
  try {
    found = await source.look();
  } catch (error) {
    found = [{ why: String(error.message).split('\n')[0] }];
  }
  for (const { path, env = {}, why } of found) {
    const answer = path ? ask(path, env) : { why };
    if (answer.version) {
      mkdirSync(cache, { recursive: true });
      writeFileSync(
        join(cache, 'browser.json'),
        JSON.stringify({ path, env, version: answer.version, from: source.name }),
      );
      console.log(`${answer.version} (${source.name})`);
      process.exit(0);
    }
    tried.push(`  ${source.name}: ${answer.why}`);
  }
}
console.error(`No Chromium answers on this machine. Tried:\n${tried.join('\n')}
Install one of these, then run the tests again:
  Debian or Ubuntu:  sudo apt-get install --no-install-recommends chromium
  Fedora:            sudo dnf install chromium
  elsewhere:         npx playwright install chromium
or say where one is: PLAYWRIGHT_CHROMIUM=PATH npm test`);
process.exit(1);
