import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { KEYS, type KeyPlace, type KeyPressed, keyIn } from '../../src/ui/frame/keys';

const PLACES = Object.keys(KEYS) as KeyPlace[];
const chordsOf = (place: KeyPlace): string[] => Object.values<readonly string[]>(KEYS[place]).flat();

/** The key event that a keyboard sends for a chord of the table. */
const pressing = (chord: string, changed: Partial<KeyPressed> = {}): KeyPressed => {
  const face = chord.split(' ').at(-1)!;
  return {
    key: /^[A-Z]$/.test(face) && !chord.includes('Shift') ? face.toLowerCase() : face,
    code: '',
    ctrlKey: chord.includes('Ctrl'),
    metaKey: false,
    altKey: false,
    shiftKey: chord.includes('Shift') || /^[?+]$/.test(face),
    ...changed,
  };
};

describe('the table of keys', () => {
  test.each(PLACES)('every key of it is heard, and has one meaning: %s', (place) => {
    for (const [act, chords] of Object.entries<readonly string[]>(KEYS[place]))
      for (const [nth, chord] of chords.entries()) {
        expect(keyIn(place, pressing(chord))).toEqual([act, nth]);
        if (chord.startsWith('Ctrl'))
          expect(keyIn(place, pressing(chord, { ctrlKey: false, metaKey: true }))).toEqual([act, nth]);
        expect(keyIn(place, pressing(chord, { altKey: true }))).toBeNull();
      }
    expect(new Set(chordsOf(place)).size).toBe(chordsOf(place).length);
  });

  test('no place takes a key that is heard anywhere', () => {
    const anywhere = new Set<string>(chordsOf('anywhere'));
    const taken = PLACES.filter((place) => place !== 'anywhere').flatMap(chordsOf);
    expect(taken.filter((chord) => anywhere.has(chord))).toEqual([]);
  });

  test('keys with Ctrl are told by their place where the alphabet has no such letter', () => {
    expect(keyIn('anywhere', pressing('Ctrl S', { key: 'ы', code: 'KeyS' }))).toEqual(['keep', 0]);
    // On a French keyboard, Z lies where W is elsewhere: the letter counts.
    expect(keyIn('anywhere', pressing('Ctrl Z', { key: 'z', code: 'KeyW' }))).toEqual(['undo', 0]);
    expect(keyIn('anywhere', pressing('Ctrl W', { key: 'w', code: 'KeyZ' }))).toBeNull();
  });
});

/** Keys named outside the table: a comparison with `event.key`, or the name of an arrow. */
const keysNamedIn = (text: string): string[] =>
  [...text.matchAll(/\.key\s*[!=]==?\s*['"`][^'"`]+|['"`]Arrow(?:Up|Down|Left|Right)\b|\bArrow\w+:/g)].map(
    ([found]) => found,
  );

describe('who listens for keys', () => {
  test('reads them from the table', () => {
    const files = ['src/app', 'src/screens', 'src/ui'].flatMap((folder) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
        .map((entry) => join(entry.parentPath, entry.name)),
    );
    expect(files.length).toBeGreaterThan(100);
    const table = ['src/ui/frame/keys.ts', 'src/ui/words/english/keys.ts'];
    const listening = files.filter((file) => readFileSync(file, 'utf8').includes('keyIn('));
    expect(listening.length).toBeGreaterThanOrEqual(10);
    const others = files.filter((file) => !table.includes(file));
    const named = others.flatMap((file) =>
      keysNamedIn(readFileSync(file, 'utf8')).map((key) => `${file}: ${key}`),
    );
    expect(named).toEqual([]);
  });

  test('and is seen where it does not', () => {
    expect(keysNamedIn("if (event.key === 'Delete') remove();")).toHaveLength(1);
    expect(keysNamedIn('const by = { ArrowUp: 1 }[event.key];')).toHaveLength(1);
    expect(keysNamedIn("import { ArrowUp } from 'lucide-react';")).toEqual([]);
  });
});
