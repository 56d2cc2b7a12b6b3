/**
 * `npm test`: everything, in order, in plain words. A stage that fails is told in full and the rest still runs, except what stands on it.
 * Leaves 0 only if every stage passed; the last line counts the tests.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { faultsOfBrowser, faultsOfUnits, faultTable, measuredBy } from './fault-table.mjs';
import { styleTable } from './style-table.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const cache = join(root, 'node_modules/.cache');
const bin = (name) => join(root, 'node_modules/.bin', name);
const unitReport = join(cache, 'unit-report.json');
const browserReport = join(cache, 'browser-report.json');
mkdirSync(cache, { recursive: true });

/** Room for what is young: with the usual 16 MB a sixth of the processor time of the unit tests went into clearing it. source: our own, measured */
const NODE_OPTIONS = [process.env['NODE_OPTIONS'], '--max-semi-space-size=64'].filter(Boolean).join(' ');

/** Runs one program to its end. Gives whether it left 0, and all it said. */
function run(program, words, env = {}) {
  return new Promise((resolve) => {
    const options = {
      cwd: root,
      env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0', NODE_OPTIONS, ...env },
      timeout: 3_000_000,
    };
    const child = spawn(program, words, options);
    let said = '';
    const hear = (chunk) => {
      said += chunk;
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', (error) => resolve({ ok: false, said: `${said}${error.message}` }));
    child.on('close', (code, signal) =>
      resolve({ ok: code === 0, said: signal ? `${said}\nstopped by ${signal}` : said }),
    );
  });
}

/** Side by side: none of these programs uses more than one core. */
async function runAll(...commands) {
  const all = await Promise.all(commands.map(([program, ...words]) => run(program, words)));
  const failed = all.filter(({ ok }) => !ok);
  return { ok: failed.length === 0, said: failed.map(({ said }) => said.trim()).join('\n\n') };
}

const freePort = () =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

const readReport = (path) => (existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null);

async function unitTests() {
  rmSync(unitReport, { force: true });
  const done = await run(bin('vitest'), ['run', '--reporter=json', `--outputFile=${unitReport}`]);
  const report = readReport(unitReport);
  if (!report) return done;
  const tests = report.testResults.flatMap((file) => file.assertionResults);
  const broken = report.testResults.filter((file) => file.status === 'failed' && file.message);
  const failures = [
    ...broken.map((file) => `${file.name}\n${file.message}`),
    ...tests
      .filter((test) => test.status === 'failed')
      .map((test) => `${test.fullName}\n${test.failureMessages.join('\n')}`),
  ];
  const failed = tests.filter((test) => test.status === 'failed').length + broken.length;
  const passed = tests.filter((test) => test.status === 'passed').length;
  return {
    ok: done.ok,
    passed,
    failed,
    skipped: tests.length - passed - failed + broken.length,
    faults: faultsOfUnits(report),
    styles: styleTable(report),
    said: failures.join('\n\n') || done.said,
  };
}

async function browserTests() {
  rmSync(browserReport, { force: true });
  const env = { PLAYWRIGHT_JSON_OUTPUT_NAME: browserReport, PREVIEW_PORT: String(await freePort()), CI: '1' };
  const done = await run(
    bin('playwright'),
    ['test', '-c', 'tests/browser/playwright.config.ts', '--reporter=list,json'],
    env,
  );
  const report = readReport(browserReport);
  if (!report) return done;
  const { stats } = report;
  const faults = faultsOfBrowser(report);
  const lost = faults.filter(({ lost, goal }) => lost > goal);
  // What passed is a line each and would push what failed out of sight.
  const told = done.said.split('\n').filter((line) => !/^\s+✓/.test(line));
  return {
    ok: done.ok && lost.length === 0,
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected + (stats.unexpected === 0 ? lost.length : 0),
    skipped: stats.skipped,
    again: stats.flaky,
    faults,
    measured: measuredBy(report),
    said: [
      ...lost.map(({ fault, what }) => `more lost than may be: ${fault}${what ? `; ${what}` : ''}`),
      ...told,
    ].join('\n'),
  };
}

const STAGES = [
  {
    name: 'format, lint and types',
    go: () =>
      runAll(
        [process.execPath, 'tests/lint-and-types.mjs', 'src', 'shared', 'vite.config.ts'],
        [process.execPath, 'tests/lint-and-types.mjs', 'tests'],
        [bin('tsc'), '-p', 'src/core/tsconfig.json'],
        [bin('knip'), '-c', 'tests/knip.mjs', '--no-config-hints'],
        [bin('biome'), 'check', '.'],
      ),
  },
  { name: 'unit tests', go: unitTests },
  {
    name: 'two servers by Redis',
    tells: true,
    go: async () => {
      await redis;
      return run(process.execPath, ['--import', 'tsx', 'tests/share-server/two-servers.ts']);
    },
  },
  {
    name: 'behind a proxy',
    tells: true,
    go: () => run(process.execPath, ['--import', 'tsx', 'tests/share-server/behind-proxy.ts']),
  },
  { name: 'build', go: () => run(bin('vite'), ['build']) },
  {
    name: 'first script',
    needs: 'build',
    tells: true,
    go: () => run(process.execPath, ['tests/bundle-budget.mjs', 'dist', '150']),
  },
  { name: 'browser', tells: true, go: () => run(process.execPath, ['tests/browser/find-browser.mjs']) },
  { name: 'browser tests', needs: 'build browser', go: browserTests },
  {
    name: 'other engines',
    needs: 'build',
    tells: true,
    go: async () => {
      await engines;
      return run(process.execPath, ['tests/browser/other-engines.mjs']);
    },
  },
];

/** Redis, then Firefox and WebKit, are fetched beside the first stages, and only where a machine is there for the tests. */
const redis =
  process.env.CI &&
  run(process.execPath, ['--import', 'tsx', 'tests/share-server/two-servers.ts', '--install']);
const engines =
  process.env.CI && redis.then(() => run(process.execPath, ['tests/browser/other-engines.mjs', '--install']));

let passed = 0;
let failed = 0;
const faults = [];
const measured = [];
let styles = '';
const fallen = new Set();
for (const { name, needs = '', tells = false, go } of STAGES) {
  const missing = needs.split(' ').filter((stage) => fallen.has(stage));
  if (missing.length > 0) {
    fallen.add(name);
    console.log(`not run  ${name}: needs ${missing.join(' and ')}`);
    continue;
  }
  const began = performance.now();
  const done = await go();
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  const counted =
    done.passed === undefined
      ? ''
      : `, ${done.passed} passed, ${done.failed} failed, ${done.skipped} skipped${done.again ? `, ${done.again} of them at the second try` : ''}`;
  passed += done.passed ?? 0;
  failed += done.ok ? 0 : Math.max(1, done.failed ?? 0);
  if (!done.ok) fallen.add(name);
  console.log(
    `${done.ok ? 'ok      ' : 'FAILED  '} ${name} (${seconds} s)${counted}${done.ok && tells ? `: ${done.said.trim()}` : ''}`,
  );
  faults.push(...(done.faults ?? []));
  styles = done.styles ?? styles;
  measured.push(...(done.measured ?? []));
  if (!done.ok) console.log(`${done.said.trim()}\n`);
}
console.log(`\n${faultTable(faults)}\n`);
if (measured.length > 0) console.log(`${measured.join('\n')}\n`);
if (styles) console.log(`${styles}\n`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(fallen.size === 0 ? 0 : 1);
