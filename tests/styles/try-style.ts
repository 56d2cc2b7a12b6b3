/**
 * `npm run style -- ID`: one style, tried as all are. What is wrong is said in words, at most fifteen lines: the style's own proof at 100 boxes,
 * what was worked by hand, then the second opinions of other libraries. Leaves 0 when all is well. `npm run style -- readme` writes the README's
 * table of styles instead.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { proveStyle, STYLES, sayProof, styleById } from '../../src/core';
import type { BoxStyle } from '../../src/core/styles';
import { faultsByHand, missingFixture, readFixture } from './fixture';
import { withStyles } from './readme-styles';

const MOST_LINES = 15;

const [id = ''] = process.argv.slice(2);
if (id === 'readme') writeFileSync('README.md', withStyles(readFileSync('README.md', 'utf8')));
else {
  const style = styleById(id);
  const ids = STYLES.map((one) => one.id).join(', ');
  const words = style ? trouble(style) : [`“${id}” is no style. There are: ${ids}.`];
  console.log((words.length > 0 ? words.slice(0, MOST_LINES) : [`${id}: all is well.`]).join('\n'));
  process.exitCode = words.length > 0 ? 1 : 0;
}

/** The first kind of trouble there is: what follows from it need not be read. */
function trouble(of: BoxStyle): readonly string[] {
  const proof = proveStyle(of, { boxes: 100 });
  if (proof.faults.length > 0) return sayProof(proof);
  const missing = missingFixture(of);
  if (missing.length > 0) return missing;
  const byHand = readFixture(of.id).cases.flatMap((worked) =>
    faultsByHand(of, worked).map((fault) => `${worked.title}: ${fault}`),
  );
  return byHand.length > 0 ? byHand : secondOpinions(of);
}

function secondOpinions({ name }: BoxStyle): readonly string[] {
  const only = `${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}, at 200 sizes`;
  const run = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      'tests/styles/every-style.test.ts',
      '-t',
      only,
      '--reporter=json',
    ],
    { encoding: 'utf8', env: { ...process.env, NO_COLOR: '1' }, maxBuffer: 1e9 },
  );
  if (run.status === 0) return [];
  const report = JSON.parse(run.stdout.slice(run.stdout.indexOf('{'))) as {
    testResults: { assertionResults: { status: string; title: string; failureMessages: string[] }[] }[];
  };
  return report.testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => status === 'failed')
    .flatMap(({ title, failureMessages }) => [
      `${name}: ${title}`,
      ...(failureMessages[0] ?? '').split('\n').slice(0, 3),
    ]);
}
