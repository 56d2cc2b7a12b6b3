import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { commandMessages } from '../../src/ui/words/english/commands';
import { draftingMessages } from '../../src/ui/words/english/drafting';
import { frontDoorMessages } from '../../src/ui/words/english/front-door';
import { helpMessages } from '../../src/ui/words/english/help';
import { keepingMessages } from '../../src/ui/words/english/keeping';
import { keyMessages } from '../../src/ui/words/english/keys';
import { englishPages } from '../../src/ui/words/english/pages';
import { pickingMessages } from '../../src/ui/words/english/picking';

const CATALOGUES = {
  pages: englishPages,
  help: helpMessages,
  commands: commandMessages,
  frontDoor: frontDoorMessages,
  keeping: keepingMessages,
  keys: keyMessages,
  picking: pickingMessages,
  drafting: draftingMessages,
};
/** Where texts are said, and not declared. */
const SAYS = /^(?!src\/(app\/messages|ui\/words)\/).*\.tsx?$/;
const code = ['src', 'shared']
  .flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).replaceAll('\\', '/'))
  .filter((path) => SAYS.test(path))
  .map((path) => readFileSync(path, 'utf8'))
  .join('\n');
/** Every name that stands in the code, as a property, a key, or the text of one. */
const names = new Set(code.match(/[\p{L}\d_-]+/gu));

function keysOf(value: unknown, at: string): string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [at];
  return Object.entries(value).flatMap(([key, each]) => keysOf(each, `${at}.${key}`));
}

test('every text of a catalogue is asked for by some page', () => {
  const keys = Object.entries(CATALOGUES).flatMap(([name, texts]) => keysOf(texts, name));
  expect(keys.length).toBeGreaterThan(900);
  expect(keys.filter((key) => !names.has(key.split('.').at(-1) ?? '') && !/\.\d+$/.test(key))).toEqual([]);
  expect(names.has('askedForByNobody')).toBe(false);
});
