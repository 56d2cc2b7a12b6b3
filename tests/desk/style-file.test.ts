import { describe, expect, test } from 'vitest';
import { callDesk } from './call-desk';

/** The tray as the desk writes it, and the same with one thing changed in its text. */
const trayFile = async (): Promise<string> => (await callDesk(['styles', 'tray'])).printed;
const size = ['--set', 'width=4 in', '--set', 'depth=3 in', '--set', 'height=1 in'];

describe('a style of your own at the desk', () => {
  test('is written from one of ours, and lays the same net', async () => {
    const files = { 'mine.json': await trayFile() };
    for (const verb of ['net', 'card']) {
      const own = await callDesk([verb, '--style-file', 'mine.json', ...size], files);
      const ours = await callDesk([verb, '--style', 'tray', ...size]);
      expect([own.codes, own.printed]).toEqual([[], ours.printed]);
    }
  });

  test('is written to a file where one is named', async () => {
    const { written, codes } = await callDesk(['styles', 'wallet', '--out', 'wallet.json']);
    expect(codes).toEqual([]);
    expect(String(written.get('wallet.json'))).toContain('"crease-and-count-style"');
  });

  test('with a wall made higher, its blank grows by that much on both sides', async () => {
    const file = JSON.parse(await trayFile());
    for (const wall of ['left', 'right']) file.style.pieces.tray.panels[wall].size[0] = 'height + 1/2 in';
    const { printed } = await callDesk(['net', '--style-file', 'mine.json', ...size], {
      'mine.json': JSON.stringify(file),
    });
    // 4 in of floor and twice 1 1/2 in of wall: 7 in, 177.8 mm; 3 in and twice 1 in: 5 in, 127 mm.
    expect(JSON.parse(printed).pieces[0].blank).toEqual({ acrossMm: 177.8, upMm: 127 });
  });

  test('holds contents as a style of ours does', async () => {
    const contents = 'demo-data/twelve-truffles.json';
    const { readFileSync } = await import('node:fs');
    const files = { 'mine.json': await trayFile(), 'c.json': readFileSync(contents, 'utf8') };
    const { printed, codes } = await callDesk(['fit', 'c.json', '--style-file', 'mine.json'], files);
    expect(codes).toEqual([]);
    const { sizes } = JSON.parse(printed) as { sizes: { style: string }[] };
    expect(new Set(sizes.map(({ style }) => style))).toEqual(new Set(['tray']));
  });

  test('stands beside another box, with the same room', async () => {
    const files = { 'mine.json': await trayFile() };
    const words = [
      'beside',
      '--style',
      'tray',
      ...size,
      '--with-style-file',
      'mine.json',
      '--with-room',
      'same',
    ];
    const { printed, codes } = await callDesk(words, files);
    expect(codes).toEqual([]);
    const [one, other] = JSON.parse(printed).boxes;
    // The tray's own file at the least marks for its own room is the tray again.
    expect(other).toEqual(one);
  });

  test('is checked at as many sizes as asked', async () => {
    const { printed, codes } = await callDesk(['prove', 'mine.json', '--boxes', '12'], {
      'mine.json': await trayFile(),
    });
    expect(codes).toEqual([]);
    expect(JSON.parse(printed)).toEqual({ style: 'tray', name: 'Tray', tried: 12, sound: true, faults: [] });
  });

  test('what does not close is listed with panel, numbers, remedy and the size that shows it', async () => {
    const file = JSON.parse(await trayFile());
    file.style.pieces.tray.panels.left.fold = 80;
    const { printed } = await callDesk(['prove', 'mine.json', '--boxes', '4'], {
      'mine.json': JSON.stringify(file),
    });
    const { sound, faults } = JSON.parse(printed);
    expect(sound).toBe(false);
    expect(faults[0]).toMatchObject({ check: 'closes', boxes: 4, at: { sizesMm: { width: 4 * 25.4 } } });
    // Two edges 1 in long with 10° between them end 2 sin 5° = 0.174 in apart, a little under 3/16.
    expect(faults[0].says).toBe('The front and the left are scant ³⁄₁₆ in apart where they should meet.');
    expect(faults[0].remedy).toMatch(/\.$/);
  });

  test.each([
    ['enoent', ['net', '--style-file', 'gone.json']],
    ['not-json', ['net', '--style-file', 'broken.json']],
    ['length-of-nothing', ['net', '--style-file', 'low.json']],
    ['length-of-nothing', ['prove', 'low.json']],
    ['style-and-file', ['net', '--style-file', 'mine.json', '--style', 'tray']],
    ['fold-and-style', ['net', '--style-file', 'mine.json', '--fold', 'x.fold']],
    ['out-of-range', ['prove', 'mine.json', '--boxes', '0']],
    ['unknown-style', ['styles', 'trai']],
  ])('is refused: %s', async (code, words) => {
    const tray = await trayFile();
    const files = {
      'mine.json': tray,
      'broken.json': tray.slice(0, 100),
      'low.json': tray.replace('"height",\n       "depth"', '"height - 2 in",\n       "depth"'),
    };
    const { codes, refused } = await callDesk(words, files);
    expect(codes).toEqual([code]);
    expect(refused[0]?.says).toMatch(/[.?]$/);
  });
});
