import { describe, expect, test } from 'vitest';
import { callDesk } from './call-desk';

/** One line of an answer. */
interface Line {
  readonly value: number;
  readonly lowerBound: number;
  readonly upperBound: number;
  readonly proven: boolean;
  readonly layouts: readonly {
    readonly sheets: number;
    readonly parts: readonly { readonly item: number; readonly w: number; readonly h: number }[];
  }[];
}
const readLine = (text: string): Line => JSON.parse(text) as Line;
const firstParts = ({ layouts }: Line) => layouts[0]?.parts ?? [];

const ask = (instances: unknown, ...words: string[]) =>
  callDesk(['yield', 'list.json', ...words], {
    'list.json': typeof instances === 'string' ? instances : JSON.stringify(instances),
  });

// Ten rectangles of our own; the value of each is its area, so the answer can be added up from the layout.
const TEN = {
  name: 'ten',
  kind: 'unconstrained-knapsack',
  sheet: { w: 250, h: 250 },
  items: [
    [167, 184],
    [114, 118],
    [167, 152],
    [83, 140],
    [70, 86],
    [143, 166],
    [120, 160],
    [66, 148],
    [87, 141],
    [69, 165],
  ].map(([w, h]) => ({ w, h, value: (w ?? 0) * (h ?? 0) })),
  rotation: false,
};

// Common practice, no source: 44 blanks 11 × 4 1/2 and 44 liners 3 1/2 × 6, in half inches; exhaustive pattern search gives 44, 28 and 19 sheets.
const favors = (w: number, h: number) => ({
  name: `${w} × ${h}`,
  kind: 'cutting-stock',
  sheet: { w, h },
  items: [
    { w: 22, h: 9, demand: 44 },
    { w: 7, h: 12, demand: 44 },
  ],
  rotation: true,
});

describe('the desk counts sheets', () => {
  test('44 boxes with liners: 44 letter, 28 of 12 × 12, 19 of 11 × 17, none fewer', async () => {
    const { printed, refused } = await ask([favors(17, 22), favors(24, 24), favors(22, 34)]);
    expect(refused).toEqual([]);
    const lines = printed.split('\n').map(readLine);
    expect(lines.map(({ value, lowerBound, proven }) => [value, lowerBound, proven])).toEqual([
      [44, 44, true],
      [28, 28, true],
      [19, 19, true],
    ]);
    for (const { value, layouts } of lines) {
      expect(layouts.reduce((sum, { sheets }) => sum + sheets, 0)).toBe(value);
      const cut = [0, 1].map((item) =>
        layouts.reduce(
          (sum, layout) => sum + layout.sheets * layout.parts.filter((part) => part.item === item).length,
          0,
        ),
      );
      expect(Math.min(...cut)).toBeGreaterThanOrEqual(44);
    }
  });

  test('a sheet of most value reaches what its pieces add up to, and not more than the sheet', async () => {
    const { printed } = await ask([TEN]);
    const line = readLine(printed);
    const { value, upperBound, proven } = line;
    const area = firstParts(line).reduce((sum, { w, h }) => sum + w * h, 0);
    expect(value).toBe(area);
    expect(value).toBe(upperBound);
    expect(proven).toBe(true);
    expect(value).toBeLessThanOrEqual(250 * 250);
  });

  test('a limit on each item is kept', async () => {
    const limited = {
      ...TEN,
      kind: 'constrained-knapsack',
      items: TEN.items.map((item) => ({ ...item, demand: 1 })),
    };
    const line = readLine((await ask([limited])).printed);
    const { value, upperBound } = line;
    const items = firstParts(line).map(({ item }) => item);
    expect(new Set(items).size).toBe(items.length);
    expect(value).toBeLessThanOrEqual(upperBound);
  });

  test('what it cannot read is refused', async () => {
    expect((await ask('{')).codes).toEqual(['not-json']);
    expect((await ask([{ ...TEN, kind: 'sudoku' }])).codes).toEqual(['not-a-choice']);
    expect((await ask([{ ...TEN, sheet: { w: -1, h: 250 } }])).codes).toEqual(['too-small']);
    expect((await ask([TEN], '--seconds', 'soon')).codes).toEqual(['not-seconds']);
  });
});
