import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';

// Under node_modules, so that the package finds zod where an installation would put it, and never finds our sources.
const home = 'node_modules/.cache/core-package';
const installed = join(home, 'node_modules/crease-and-count-core');
const node = (...words: string[]) =>
  execFileSync(process.execPath, words, { encoding: 'utf8', stdio: 'pipe' });
const blocks = [...readFileSync('src/core/package/README.md', 'utf8').matchAll(/```js\n(.*?)```/gs)].map(
  ([, code = '']) => code,
);

/** `value; // → wanted` as a comparison; whatever else the example does stays. */
const asTest = (code: string): string =>
  `import assert from 'node:assert/strict';\n${code.replace(/^(.+?); \/\/ → (.+)$/gm, 'assert.deepEqual($1, $2);')}`;

describe('the core as a package', { timeout: 300_000 }, () => {
  beforeAll(() => {
    rmSync(home, { recursive: true, force: true });
    mkdirSync(installed, { recursive: true });
    node('src/core/package/pack.mjs', join(home, 'packed'));
    execFileSync('npm', ['pack', './packed', '--silent'], { cwd: home });
    const [archive = ''] = readdirSync(home).filter((name) => name.endsWith('.tgz'));
    execFileSync('tar', ['-xzf', join(home, archive), '-C', installed, '--strip-components=1']);
  }, 300_000);

  it.each(blocks.map((code, at) => [at + 1, code] as const))('does what example %i shows', (at, code) => {
    expect(asTest(code)).toContain('assert.deepEqual');
    const path = join(home, `example-${at}.mjs`);
    writeFileSync(path, asTest(code));
    expect(node(path)).toBe('');
  });

  it('an example that does not hold is seen', () => {
    const path = join(home, 'wrong.mjs');
    writeFileSync(path, asTest((blocks[1] ?? '').replace('inches(3, 1, 2)', 'inches(3, 1, 4)')));
    expect(() => node(path)).toThrow('deep-equal');
  });

  it('gives its types to whoever resolves modules as Node does', () => {
    writeFileSync(
      join(home, 'typed.mts'),
      `import { type BoxNet, inches, layNet, STYLES } from 'crease-and-count-core';
const [style] = STYLES;
export const box: BoxNet | null = style ? layNet(style, { sizes: { width: inches(4) }, caliperUm: 305 }) : null;
// @ts-expect-error: a bare number is no length
export const slip = style && layNet(style, { sizes: { width: 4 }, caliperUm: 305 });
`,
    );
    const options = ['--strict', '--noEmit', '--module', 'nodenext', '--target', 'es2023', '--types', 'node'];
    expect(
      node('node_modules/typescript/bin/tsc', '--ignoreConfig', join(home, 'typed.mts'), ...options),
    ).toBe('');
  });

  it('has about forty names, every one of them shown or typed, and needs zod alone', () => {
    const names = [...readFileSync('src/core/index.ts', 'utf8').matchAll(/^export (?:type )?\{(.*?)\}/gms)]
      .flatMap(([, list = '']) => list.split(','))
      .map((name) => name.trim());
    const shown = blocks.join('\n');
    const values = names.filter((name) => name !== '' && !name.startsWith('type '));
    expect(values.filter((name) => name !== 'Sizing' && !shown.includes(name))).toEqual([]);
    expect(names.length).toBeGreaterThan(35);
    expect(names.length).toBeLessThan(50);
    const manifest = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as {
      dependencies: Record<string, string>;
    };
    expect(Object.keys(manifest.dependencies)).toEqual(['zod']);
  });
});
