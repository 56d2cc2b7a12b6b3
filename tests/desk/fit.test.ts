import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { callDesk } from './call-desk';

/** What the tests look at of an answer. */
interface Fit {
  readonly grams: number;
  readonly arrangements: readonly {
    readonly sizeMm: readonly number[];
    readonly insideMm: readonly number[];
  }[];
  readonly sizes: readonly {
    readonly arrangement: number;
    readonly sizesMm: Readonly<Record<string, number>>;
    readonly marks: readonly { readonly atMm: number }[];
  }[];
  readonly cautions: readonly string[];
}
const answer = (printed: string): Fit => JSON.parse(printed) as Fit;

const truffles = readFileSync('demo-data/twelve-truffles.json', 'utf8');
const ask = (text: string) => callDesk(['fit', 'box.json'], { 'box.json': text });

describe('the desk fits contents', () => {
  test('twelve truffles lie 4 × 3, and every size offered stands on the trimmer’s sixteenths and holds them', async () => {
    const { printed, refused } = await ask(truffles);
    expect(refused).toEqual([]);
    const found = answer(printed);
    // Hand-worked: 28 mm and half a millimetre of cup all round is 29; four by three is 116 × 87, and wrapped things have 1/8 in of air.
    const flat = found.arrangements.find(({ sizeMm }) => sizeMm.join('×') === '116×87×29');
    expect(flat?.insideMm).toEqual([119.175, 90.175, 32.175]);
    expect(found.grams).toBe(180);
    expect(found.sizes.length).toBeGreaterThan(0);
    for (const { marks, sizesMm, arrangement } of found.sizes) {
      for (const { atMm } of marks) expect((atMm / 1.5875) % 1).toBeCloseTo(0, 9);
      const [width = 0] = found.arrangements[arrangement]?.insideMm ?? [];
      expect(sizesMm['width']).toBeGreaterThan(width);
    }
    expect(found.cautions.join(' ')).toMatch(/wrap food first.*allergens/i);
  });

  test('a size held is in every row', async () => {
    const { printed } = await ask(truffles.replace('"heldMm": {}', '"heldMm": { "lip": 25.4 }'));
    const lips = answer(printed).sizes.map(({ sizesMm }) => sizesMm['lip'] ?? 25.4);
    expect(new Set(lips)).toEqual(new Set([25.4]));
  });

  test('what it cannot read is refused by name', async () => {
    expect((await ask(truffles.replace('"open-top"', '"open-tip"'))).codes).toEqual(['unknown-style']);
    expect((await ask(truffles.replace('"count": 12', '"count": 0'))).codes).toEqual(['too-small']);
    expect((await ask(truffles.replace('"sphere"', '"cube"'))).codes).toEqual(['not-a-choice']);
    expect((await ask('[')).codes).toEqual(['not-json']);
    expect((await callDesk(['fit', 'none.json'])).codes).toEqual(['enoent']);
  });
});
