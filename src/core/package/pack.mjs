/**
 * `npm run core`: packs the core as a package that installs anywhere, into `dist/core` or the folder named. One script, its types, its README.
 */
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const core = join(root, 'src/core');
const out = resolve(process.argv[2] ?? join(root, 'dist/core'));
const { version, license, engines, dependencies } = JSON.parse(
  readFileSync(join(root, 'package.json'), 'utf8'),
);

mkdirSync(out, { recursive: true });
await build({
  root,
  configFile: false,
  publicDir: false,
  logLevel: 'warn',
  build: {
    outDir: out,
    emptyOutDir: true,
    minify: false,
    target: 'es2022',
    lib: { entry: join(core, 'index.ts'), formats: ['es'], fileName: 'index' },
    rolldownOptions: { external: ['zod'] },
  },
});

// Types: a file each, with the endings that every resolver of modules asks for.
const types = join(out, 'types');
const options = [
  '--noEmit',
  'false',
  '--declaration',
  '--emitDeclarationOnly',
  '--rootDir',
  core,
  '--outDir',
  types,
];
execFileSync(
  process.execPath,
  [join(root, 'node_modules/typescript/bin/tsc'), '-p', join(core, 'package'), ...options],
  { stdio: 'inherit' },
);
const files = readdirSync(types, { recursive: true }).filter((name) => name.endsWith('.d.ts'));
const known = new Set(files);
for (const name of files) {
  const path = join(types, name);
  const withEnding = (_all, before, target, after) => {
    const file = relative(types, resolve(path, '..', target));
    return `${before}${target}${known.has(`${file}.d.ts`) ? '' : '/index'}.js${after}`;
  };
  writeFileSync(
    path,
    readFileSync(path, 'utf8').replace(
      /((?:from|import)\s*\(?\s*['"])(\.{1,2}(?:\/[^'"]*)?)(['"])/g,
      withEnding,
    ),
  );
}

copyFileSync(join(core, 'package/README.md'), join(out, 'README.md'));
const manifest = {
  name: 'crease-and-count-core',
  version,
  description: 'Folded boxes: net, folding, bench program and sheets, with proof.',
  type: 'module',
  license,
  engines,
  exports: { '.': { types: './types/index.d.ts', default: './index.js' } },
  dependencies: { zod: dependencies.zod },
};
writeFileSync(join(out, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
console.log(
  `${relative(process.cwd(), out)}: crease-and-count-core ${version}; npm pack there makes one file of it.`,
);
