import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { upwardArrows } from './house/layers';
import { tooLong } from './house/length';
import { namelessParts, strangersIn } from './house/names';
import {
  foreignLicences,
  type LockedPackages,
  loosePins,
  type Manifest,
  RUNTIME,
  unsafeLocks,
} from './house/packages';
import { unsourcedNumbers } from './house/sources';
import { hardCodedText, pastedSentences } from './house/spoken-text';
import { topLevelFaults } from './house/top-level';

const read = (path: string) => readFileSync(path, 'utf8');
const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).replaceAll('\\', '/'));

const rooms = ['src', 'shared', 'tests', 'demo-data', 'public'].flatMap(filesUnder);
const source = rooms.filter((path) => /^(src|shared)\/.*\.tsx?$/.test(path));
const written = [...rooms, 'README.md', 'DEVELOPERS.md', 'package.json', 'vite.config.ts', '.ci/run'].filter(
  (path) => /\.(tsx?|m?js|json|md|css|html|svg)$|run$/.test(path),
);

describe('the rooms of the house', () => {
  test('every import points down', () => {
    expect(source.length).toBeGreaterThan(10);
    expect(source.flatMap((path) => upwardArrows(path, read(path)))).toEqual([]);
  });

  test.each([
    ['src/core/units/ticks.ts', "import type { Face } from '../net/types';", 'upwards'],
    ['src/core/net/lay-net.ts', "export { foldNet } from '../fold/fold-net';", 'upwards'],
    ['src/core/net/lay-net.ts', "import { z } from 'zod';", 'the package zod'],
    ['src/core/bench/run.ts', "import { readFileSync } from 'node:fs';", 'only the desk'],
    ['src/screens/box/box-screen.tsx', "import { Shelf } from '../shelf/shelf-screen';", 'another screen'],
    ['src/screens/box/box-screen.tsx', "const port = await import('../../storage/dexie');", 'upwards'],
    ['src/state/recipes.ts', "import { openDexie } from '../storage/dexie';", 'may see only'],
    ['src/ui/net-view.tsx', "import { useRecipe } from '../state/recipes';", 'upwards'],
    ['src/extras/thing.ts', '', 'no room'],
  ])('an arrow that points up is seen: %s with %s', (path, text, fault) => {
    expect(upwardArrows(path, text).join()).toContain(fault);
  });

  test('the top level holds what DEVELOPERS.md lists, and nothing else', () => {
    const made = read('.gitignore')
      .split('\n')
      .map((line) => line.replace(/\/$/, ''));
    expect(topLevelFaults(readdirSync('.'), made)).toEqual([]);
  });

  test('a stray file and a missing one are both seen at the top level', () => {
    const faults = topLevelFaults(['docs', 'src', '.git', 'dist'], ['dist']);
    expect(faults).toContain('docs does not belong at the top level');
    expect(faults).toContain('README.md is missing');
    expect(faults.join()).not.toContain('dist');
  });
});

describe('length', () => {
  test('no file of the app has more than 300 lines, and no function more than 80', () => {
    const code = rooms.filter((path) => /^(src|shared)\/.*\.(tsx?|css)$/.test(path));
    expect(code.length).toBeGreaterThan(1000);
    expect(code.flatMap((path) => tooLong(path, read(path)))).toEqual([]);
  });

  test('a long function and a long file are seen', () => {
    const line = '  step();\n';
    expect(tooLong('a.ts', `const walk = () => {\n${line.repeat(79)}};\n`)).toEqual(['a.ts:1 walk, 81']);
    expect(tooLong('a.ts', `function walk() {\n${line.repeat(78)}}\n`)).toEqual([]);
    expect(tooLong('a.css', line.repeat(301))).toEqual(['a.css, 301']);
    expect(tooLong('a.ts', line.repeat(300))).toEqual([]);
  });
});

describe('names and words', () => {
  test('every file and folder is named for what it holds', () => {
    expect(rooms.filter((path) => namelessParts(path).length > 0)).toEqual([]);
  });

  test.each([
    'src/core/utils/round.ts',
    'src/ui/helpers.ts',
    'src/core/net/Common.ts',
    'src/core/net/layNet.ts',
  ])('a nameless name is seen: %s', (path) => {
    expect(namelessParts(path)).not.toEqual([]);
  });

  test("no file speaks of somebody's machine, or of how it came to be", () => {
    expect(written.flatMap((path) => strangersIn(read(path)).map((word) => `${path}: ${word}`))).toEqual([]);
  });

  test.each([
    ['read ', '/wo', 'rk/main'],
    ['as the tran', 'script says'],
    ['AI-gener', 'ated'],
    ['see issue', ' 12'],
    ['TO', 'DO later'],
  ])('a stranger is seen: %s%s', (...halves) => {
    expect(strangersIn(halves.join(''))).not.toEqual([]);
  });
});

describe('numbers', () => {
  test('every named number with a unit says where it comes from; only how a page is laid out is ours to choose', () => {
    const rooms = source.filter((path) => /^(src\/(core\/(?!draw\/)|desk)|shared)\//.test(path));
    expect(rooms.flatMap((path) => unsourcedNumbers(read(path)).map((name) => `${path}: ${name}`))).toEqual(
      [],
    );
  });

  test('a number without a source is seen, and one with a source above or beside it is not', () => {
    expect(unsourcedNumbers('const TAB_MM = 12;')).toEqual(['TAB_MM']);
    expect(unsourcedNumbers('/** Width. */\nexport const TAB_MM: number = 12;')).toEqual(['TAB_MM']);
    expect(unsourcedNumbers('const TAB_MM = 12; // source: common practice, no source')).toEqual([]);
    expect(unsourcedNumbers('/** Widths. Source: ISO 216. */\nconst A_MM = 210;\nconst B_MM = 297;')).toEqual(
      [],
    );
  });
});

describe('the language of the pages', () => {
  /** The catalogue itself, and the table of keys, whose names the catalogue spells. */
  const isCatalogue = (path: string) => /^src\/(app\/messages\/|ui\/words\/|ui\/frame\/keys\.ts)/.test(path);
  /** Names of sizes of paper as the table of sheets has them, which the catalogue spells. */
  const NAMES_IN_TABLES = /what-if-panel\.tsx:\d+: (North American|ISO A)$/;

  test('every text of a page comes from the catalogue', () => {
    const pages = source.filter((path) => /^src\/(app|screens|ui)\//.test(path) && !isCatalogue(path));
    expect(pages.length).toBeGreaterThan(200);
    const found = pages.flatMap((path) => hardCodedText(path, read(path)));
    expect(found.filter((text) => !NAMES_IN_TABLES.test(text))).toEqual([]);
  });

  test('a sentence of the core is a template with its facts beside it', () => {
    const speaks = source.filter((path) => /^(src\/(core|print)|shared)\//.test(path));
    expect(speaks.flatMap((path) => pastedSentences(path, read(path)))).toEqual([]);
    expect(pastedSentences('a.ts', '\nconst a = { says: `The $' + '{panel} is {wide} wide.` };')).toEqual([
      'a.ts:2',
    ]);
    expect(pastedSentences('a.ts', 'reason(`Cut $' + '{count}.`, {})')).toEqual(['a.ts:1']);
    expect(pastedSentences('a.ts', "reason('Cut {count}.', { count })")).toEqual([]);
  });

  test.each([
    '<p>Nothing here yet</p>',
    '<p>{count} boxes</p>',
    '<button title="Close it" />',
    '<input aria-label="Width" />',
    '<p>{open ? "Hide the rest" : words.more}</p>',
    `<p>{\`\${count} to go\`}</p>`,
    'const acts = [{ label: "print", run }];',
    'notify("Saved.");',
  ])('a text in the code is seen: %s', (text) => {
    expect(hardCodedText('page.tsx', text)).toHaveLength(1);
  });

  test.each([
    '<p className="soft wide">{words.none} 3½ × 2 in</p>',
    '<path d="M2 2h28v21 l" viewBox="0 0 wide high" />',
    `<li key={\`a place \${at}\`} id="the list">×</li>`,
    'if (reads === "off the near edge") throw new RangeError("no such edge");',
    'const face = classNames("button button-act", lit && "is lit");',
    '<NumberField label={words.weight} unit="g" />',
  ])('what is meant for code or stands apart from language is not: %s', (text) => {
    expect(hardCodedText('page.tsx', text)).toEqual([]);
  });
});

describe('what the house is built of', () => {
  const manifest = JSON.parse(read('package.json')) as Manifest;
  const locked = (JSON.parse(read('package-lock.json')) as { packages: LockedPackages }).packages;

  test('every package is pinned to one version', () => {
    expect(loosePins(manifest)).toEqual([]);
    expect(loosePins({ dependencies: { a: '^1.2.3' }, devDependencies: { b: 'latest' } })).toHaveLength(2);
  });

  test('nothing goes to a maker that was not decided on', () => {
    expect(Object.keys(manifest.dependencies ?? {})).toEqual(Object.keys(RUNTIME));
  });

  test('the lock file names no host, and every package can be verified', () => {
    expect(unsafeLocks(locked)).toEqual([]);
    const bad = { '': {}, a: { resolved: 'https://example.org/a.tgz', integrity: 'x' }, b: {} };
    expect(unsafeLocks(bad)).toEqual(['a', 'b']);
  });

  test('every licence lets us give the work away', () => {
    expect(Object.keys(locked).length).toBeGreaterThan(100);
    expect(foreignLicences(locked)).toEqual([]);
  });

  test('a licence that would bind the maker is seen', () => {
    const bad: LockedPackages = {
      '': {},
      a: { license: 'GPL-3.0-only', dev: true },
      b: { license: 'MIT AND LGPL-3.0-or-later' },
      c: { license: 'GPL-2.0 OR MIT' },
      d: { license: 'CC-BY-4.0' },
      e: {},
    };
    expect(foreignLicences(bad).map((fault) => fault[0])).toEqual(['a', 'b', 'd', 'e']);
  });
});
