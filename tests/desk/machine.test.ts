import { spawnSync } from 'node:child_process';
import {
  linkSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { machine } from '../../src/desk/machine';
import { runDesk } from '../../src/desk/run-desk';
import { recordFault } from '../setup/fault-record';
import { fortyFavors } from './forty-favors';

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

/** The same without a process of its own: the sentences of what was refused. */
const refusedHere = async (...words: string[]) =>
  (await runDesk(words, machine)).map(({ says }) => says).join(' ');

describe('files of this machine', () => {
  test('what was read is never written over, nor any saved workbook, by whatever name it is called', async (context) => {
    const mine = join(folder, 'mine.json');
    const other = join(folder, 'other.json');
    const text = JSON.stringify(fortyFavors, null, 2);
    writeFileSync(mine, text);
    writeFileSync(other, text);
    symlinkSync(mine, join(folder, 'alias.json'));
    linkSync(mine, join(folder, 'twin.json'));
    const outs = ['mine.json', './mine.json', 'alias.json', 'twin.json', 'other.json'];
    let lost = 0;
    for (const out of outs) {
      const says = await refusedHere('net', mine, '--recipe', 'sweets', '--out', `${folder}/${out}`);
      if (!/holds (?:what was read|a saved workbook)/.test(says)) lost++;
      if ([mine, other, join(folder, 'twin.json')].some((path) => readFileSync(path, 'utf8') !== text))
        lost++;
      writeFileSync(mine, text);
      writeFileSync(other, text);
    }
    recordFault(context, { fault: 'the desk writes over a saved file', tries: outs.length, lost, goal: 0 });
  });

  test('where the disk is full the old file stands as it was, and no part of the new one is left', async () => {
    expect(await refusedHere('net', '--style', 'open-top', '--out', '/dev/full')).toContain(
      'the disk is full',
    );
    const limited = join(folder, 'limited');
    expect(await refusedHere('net', '--style', 'open-top', '--out', join(limited, 'net.json'))).toBe('');
    const old = readFileSync(join(limited, 'net.json'), 'utf8');
    // A limit on the size of files stands for the full disk: writing breaks off in the middle.
    const command = `ulimit -f 4; "${process.execPath}" --import tsx src/desk/main.ts net --style star-box --out "${limited}/net.json"`;
    const cut = spawnSync('bash', ['-c', `trap '' XFSZ; ${command}`], { encoding: 'utf8' });
    expect([cut.status, cut.stderr]).toEqual([2, expect.stringContaining('larger than this machine')]);
    expect(readFileSync(join(limited, 'net.json'), 'utf8')).toBe(old);
    expect(readdirSync(limited)).toEqual(['net.json']);
  });

  test('a file of gigabytes is refused before it is read, and a place under /proc without a wait', async () => {
    const huge = join(folder, 'huge.json');
    writeFileSync(huge, '');
    truncateSync(huge, 1_900_000_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(await refusedHere('plan', huge)).toContain('it is too large');
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(100_000_000);
    expect(await refusedHere('net', '--style', 'open-top', '--out', '/proc/x/y')).toContain('/proc/x/y: ');
  });
});
