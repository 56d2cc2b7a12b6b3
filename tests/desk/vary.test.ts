import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { callDesk } from './call-desk';

interface Vary {
  readonly members: readonly {
    readonly roomAskedMm: readonly number[];
    readonly found: null | {
      readonly insideMm: readonly [number, number, number];
      readonly outsideAtMostMm: readonly [number, number, number];
      readonly sizesMm: Readonly<Record<string, number>>;
    };
  }[];
}
interface Beside {
  readonly boxes: readonly {
    readonly name: string;
    readonly fenceSettings: number;
    readonly betweenMarks: number;
    readonly boxesPerSheet: number | null;
    readonly insideMm: readonly number[];
    readonly holdsMl: number | null;
    readonly stops: readonly unknown[];
    readonly cards: readonly { readonly acrossMm: number; readonly upMm: number }[];
  }[];
}
const vary = async (...words: string[]) => {
  const { printed, codes } = await callDesk(['vary', ...words]);
  return { codes, members: codes.length === 0 ? (JSON.parse(printed) as Vary).members : [] };
};
const SIXTEENTH = 1.5875;

describe('the desk varies a box', () => {
  test('trays that go into one another: each holds the one before with card and air to spare, all on sixteenths', async () => {
    const { members } = await vary(
      '--style', 'tray', '--room', '2 × 1 1/2 × 2 in', '--members', '3', '--air', '1/16 in', '--sheet', 'square-12',
    ); // biome-ignore format: one call
    const found = members.flatMap((member) => member.found ?? []);
    expect(found).toHaveLength(3);
    for (const { sizesMm } of found)
      for (const mm of Object.values(sizesMm)) expect((mm / SIXTEENTH) % 1).toBeCloseTo(0, 9);
    // By hand: card of 0.3 mm on both sides of the one inside, and 1/16 in of air.
    for (const [place, next] of found.slice(1).entries())
      for (const axis of [0, 1, 2] as const)
        expect(next.insideMm[axis]).toBeGreaterThanOrEqual(
          (found[place]?.insideMm[axis] ?? 0) + (axis === 2 ? 0.3 : 0.6) + SIXTEENTH,
        );
    for (const { insideMm, outsideAtMostMm } of found)
      for (const axis of [0, 1] as const)
        expect(outsideAtMostMm[axis]).toBeGreaterThanOrEqual(insideMm[axis] + 0.6);
  });

  test('a family that grows by a quarter asks for a quarter more room each time', async () => {
    const { members } = await vary('--style', 'tray', '--room', '40x40x20mm', '--members', '3', '--larger', '25', '--unit', 'mm', '--sheet', 'a3'); // biome-ignore format: one call
    // By hand: 40, 50, 62.5; 20, 25, 31.25.
    expect(members.map(({ roomAskedMm }) => roomAskedMm)).toEqual([
      [40, 40, 20],
      [50, 50, 25],
      [62.5, 62.5, 31.25],
    ]);
  });

  test('ends where a size fits the sheet no more, and says so by an empty place', async () => {
    const { members } = await vary(
      '--style',
      'tray',
      '--room',
      '5 × 4 × 1 in',
      '--members',
      '5',
      '--larger',
      '60',
    );
    expect(members.at(-1)?.found).toBeNull();
    expect(members.length).toBeLessThan(5);
  });

  test.each([
    [['--room', '2 by 3'], 'not-a-room'],
    [['--room', '2 × 3 in'], 'not-a-room'],
    [['--members', '9'], 'members-out-of-range'],
    [['--larger', 'much'], 'larger-out-of-range'],
    [['--sheet', 'tissue'], 'unknown-sheet'],
    [['--air', 'a bit'], 'not-a-length'],
    [['--air', '1/8 in', '--larger', '25'], 'air-or-larger'],
  ])('refuses %s', async (words, code) => {
    const { codes } = await vary('--style', 'tray', ...words);
    expect(codes).toEqual([code]);
  });
});

describe('the desk sets two boxes side by side', () => {
  // Worked by hand for the trade box of 3 1/2 × 1 1/2 × 3 in: card of 11 × 4 1/2 in; scores at 3 1/2, 5, 8 1/2, 10 and across at 3.
  test('with the numbers a hand counts', async () => {
    const sizes = [
      '--set',
      'width=3 1/2 in',
      '--set',
      'depth=1 1/2 in',
      '--set',
      'height=3 in',
      '--set',
      'flap=1 1/2 in',
    ];
    const { printed, refused } = await callDesk([
      'beside', '--style', 'open-top', ...sizes, '--with-style', 'tray', '--sheet', 'square-12',
    ]); // biome-ignore format: one call
    expect(refused).toEqual([]);
    const [box, tray] = (JSON.parse(printed) as Beside).boxes;
    expect(box?.cards).toEqual([{ piece: expect.any(String), acrossMm: 279.4, upMm: 114.3 }]);
    expect(box).toMatchObject({ fenceSettings: 5, betweenMarks: 0, boxesPerSheet: 2 });
    expect(tray?.name).toBe('Tray');
  });

  test('two styles at one room: the second as large inside as the first, and no smaller', async () => {
    const words = ['beside', '--style', 'open-top', '--with-style', 'tray', '--with-room'];
    const { printed, refused } = await callDesk([...words, 'same']);
    expect(refused).toEqual([]);
    const [box, tray] = (JSON.parse(printed) as Beside).boxes;
    // 3 1/2 × 1 1/2 × 3 in from score to score, less a caliper each way; the tray on its next sixteenths.
    for (const axis of [0, 1, 2]) {
      const over = (tray?.insideMm[axis] ?? 0) - (box?.insideMm[axis] ?? 0);
      expect(over).toBeGreaterThanOrEqual(0);
      expect(over).toBeLessThan(25.4 / 16);
    }
    const deep = JSON.parse((await callDesk([...words, '4 × 3 × 60 in'])).printed) as Beside;
    expect(deep.boxes[1]?.stops.length).toBeGreaterThan(0);
    // A wallet lies flat and closes round no room.
    const flat = await callDesk(['beside', '--style', 'open-top', '--with-style', 'wallet']);
    expect((JSON.parse(flat.printed) as Beside).boxes.map(({ holdsMl }) => holdsMl)).toEqual([
      expect.any(Number),
      null,
    ]);
    expect((await callDesk([...words, 'roomy'])).codes).toEqual(['not-a-room']);
  });

  test('a second recipe of the same file is found by its id', async () => {
    const file = readFileSync('demo-data/seed-swap-supper.json', 'utf8');
    const ids = (JSON.parse(file) as { recipes: { id: string; name: string }[] }).recipes;
    const words = ['beside', 'supper.json', '--recipe', ids[0]?.id ?? '', '--with-recipe', ids[1]?.id ?? ''];
    const { printed, refused } = await callDesk(words, { 'supper.json': file });
    expect(refused).toEqual([]);
    expect((JSON.parse(printed) as Beside).boxes.map(({ name }) => name)).toEqual(
      ids.slice(0, 2).map(({ name }) => name),
    );
    expect((await callDesk(['beside', '--style', 'tray'])).codes).toEqual(['no-second-box']);
    const missing = await callDesk(words.slice(0, 4), { 'supper.json': file });
    expect(missing.codes).toEqual(['which-recipe']);
  });
});
