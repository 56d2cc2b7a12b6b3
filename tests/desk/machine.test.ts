import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';

vi.setConfig({ testTimeout: 60_000 });

/** The desk as a maker starts it, on this machine's own files. */
const desk = (...words: string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', 'src/desk/main.ts', ...words], { encoding: 'utf8' });

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'desk-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('the desk as a command', () => {
  test('prints one JSON document, says nothing else and leaves 0', () => {
    const { status, stdout, stderr } = desk('styles');
    expect([status, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout)).toBeInstanceOf(Array);
  });

  test('leaves 2 for refused input, with sentences first and JSON on the last line, and prints nothing', () => {
    const { status, stdout, stderr } = desk('net', '--style', 'open-top', '--set', 'width=abc');
    expect([status, stdout]).toEqual([2, '']);
    const lines = stderr.trim().split('\n');
    expect(lines[0]).toContain('width: “abc” is not a length.');
    expect(JSON.parse(lines.at(-1) ?? '')).toMatchObject({
      refused: [{ code: 'not-a-length', path: 'width', found: 'abc' }],
    });
  });

  test('names a missing file, a folder, bytes that are no text and a place it may not write', () => {
    const binary = join(folder, 'binary.json');
    writeFileSync(binary, Uint8Array.of(0xff, 0xfe, 0x80, 0x00));
    for (const [words, sentence] of [
      [['net', join(folder, 'none.json')], 'there is no such file'],
      [['net', folder], 'that is a folder'],
      [['net', binary], 'it is not text in UTF-8'],
      [
        ['net', '--style', 'open-top', '--out', join(binary, 'net.json')],
        'a part of the path is not a folder',
      ],
    ] as const) {
      const { status, stderr } = desk(...words);
      expect(stderr).toContain(sentence);
      expect(stderr).not.toMatch(/\bat .*:\d+:\d+/);
      expect(status).toBe(2);
    }
  });

  test('writes where it is told, making the folders on the way', () => {
    const out = join(folder, 'a', 'b', 'net.json');
    expect(desk('net', '--style', 'open-top', '--out', out).status).toBe(0);
    expect(JSON.parse(readFileSync(out, 'utf8'))).toMatchObject({ style: 'open-top' });
  });

  test('a reader that closes early is no fault', () => {
    const piped = spawnSync(
      'sh',
      ['-c', `"${process.execPath}" --import tsx src/desk/main.ts net --style open-top | head -c 10`],
      {
        encoding: 'utf8',
      },
    );
    expect([piped.status, piped.stderr]).toEqual([0, '']);
  });
});
