import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawNet, drawNetToFit } from '../../../src/core/draw/net/net-drawing';
import { tableOfLines } from '../../../src/core/draw/net/net-table';
import type { TextMark } from '../../../src/core/draw/strokes/marks';
import type { Mark } from '../../../src/core/draw/strokes/types';
import { layNet } from '../../../src/core/net';
import type { At } from '../../../src/core/plane';
import { STYLES } from '../../../src/core/styles';
import { inches, millimetres, type Ticks, toMm } from '../../../src/core/units/ticks';
import { SEED } from '../../seed';
import { textCollisions } from './text-collisions';
import { tradeBox } from './trade-box';

const inch = { unit: 'in', finest: inches(0, 1, 16) } as const;
const metric = { unit: 'mm', finest: millimetres(1) } as const;
const options = { ruler: inch, scale: 0.6, textMm: 4.94 } as const;

const keysOf = (marks: readonly Mark[], test: (mark: Mark) => boolean) =>
  new Set(marks.filter(test).flatMap((mark) => mark.key ?? []));
const isNetLine = (mark: Mark) =>
  (mark.kind === 'line' || mark.kind === 'arc') && !['dimension', 'guide', 'grain'].includes(mark.ink);

describe('a drawn net and its table', () => {
  for (const faceUp of ['inside', 'outside'] as const)
    it(`have a row for every line and a line for every row, ${faceUp} face up`, () => {
      const { marks } = drawNet(tradeBox, { ...options, faceUp });
      const rows = tableOfLines(tradeBox, faceUp);
      expect(marks.filter(isNetLine).every((mark) => mark.key)).toBe(true);
      expect(keysOf(marks, isNetLine)).toEqual(new Set(rows.map((row) => row.key)));
      expect(rows.length).toBe(new Set(rows.map((row) => row.key)).size);
    });

  it('agree on where each line lies', () => {
    const { marks, origin, scale } = drawNet(tradeBox, options);
    const onCard = ([x, y]: At) => [
      (x - origin[0]) / scale,
      toMm(tradeBox.blank.up) - (y - origin[1]) / scale,
    ];
    for (const row of tableOfLines(tradeBox)) {
      const line = marks.find((mark) => isNetLine(mark) && mark.key === row.key);
      const ends = line?.kind === 'line' ? line.points.map(onCard) : [];
      expect(ends.length).toBe(2);
      ends.forEach(([fromLeft, fromTop], i) => {
        expect(fromLeft).toBeCloseTo(toMm(row.fromLeft[i as 0 | 1]), 6);
        expect(fromTop).toBeCloseTo(toMm(row.fromTop[i as 0 | 1]), 6);
      });
    }
  });

  it('show every number that a row is measured by, and no other', () => {
    const { marks } = drawNet(tradeBox, options);
    const numbers = keysOf(marks, (mark) => mark.kind === 'text');
    const wanted = tableOfLines(tradeBox)
      .filter((row) => row.ink !== 'edge')
      .flatMap((row) => row.lights.slice(1));
    expect(numbers).toEqual(new Set([...wanted, 'left 89408', 'top 36576'])); // and the card itself: 11 in, 4 1/2 in
  });
});

describe('the numbers of the box 3 1/2 wide, 1 1/2 deep, 3 high', () => {
  it('run 3½, 5, 8½, 10, 11 from the left and 3, 4½ from the top', () => {
    const { marks } = drawNet(tradeBox, options);
    const big = marks.filter(
      (mark): mark is TextMark =>
        mark.kind === 'text' && /^(left|top)/.test(mark.key ?? '') && mark.bold === true,
    );
    expect(big.map((mark) => mark.text)).toEqual(['3½', '5', '8½', '10', '11', '3', '4½']);
  });

  it('run from the edge opposite the tab when the outside lies up too, and valleys become mountains', () => {
    const rows = tableOfLines(tradeBox, 'outside');
    const upright = rows.filter((row) => row.way === 'upright' && row.ink.startsWith('score'));
    expect(upright.map((row) => row.fromLeft[0])).toEqual([
      inches(3, 1, 2),
      inches(5),
      inches(8, 1, 2),
      inches(10),
    ]);
    // Turned over top to bottom: the score 1 1/2 in from the bottom is so far from the top.
    const level = rows.filter((row) => row.way === 'level' && row.ink.startsWith('score'));
    expect(level.map((row) => row.fromTop[0])).toEqual([inches(1, 1, 2)]);
    expect(upright.every((row) => row.ink === 'score-mountain')).toBe(true);
  });

  it('stand in the table with the gap to the line before', () => {
    const scores = tableOfLines(tradeBox).filter(
      (row) => row.way === 'upright' && row.ink === 'score-valley',
    );
    expect(scores.map((row) => row.gap)).toEqual([
      inches(3, 1, 2),
      inches(1, 1, 2),
      inches(3, 1, 2),
      inches(1, 1, 2),
    ]);
  });
});

/** A strip scored at any places at all. */
const scoredStrip = (places: readonly number[]) => {
  const [face, ...rest] = tradeBox.faces;
  const up = inches(4, 1, 2);
  return {
    ...tradeBox,
    faces: face ? [face] : rest,
    waste: [],
    joints: [],
    edges: places.map((place) => ({
      ...tradeBox.edges[0]!,
      a: { x: place as Ticks, y: millimetres(0) },
      b: { x: place as Ticks, y: up },
      kind: 'score' as const,
      foldDeg: 90,
    })),
  };
};

describe('numbers never touch', () => {
  it('on the box, in inches and in millimetres, large and small', () => {
    for (const ruler of [inch, metric])
      for (const scale of [0.2, 0.35, 0.5, 0.7, 1, 2])
        for (const grain of ['across', 'up'] as const)
          expect(textCollisions(drawNet(tradeBox, { ruler, scale, textMm: 4.94, grain }))).toEqual([]);
  });

  it('on a strip scored anywhere, up to 24 times', () => {
    const places = fc.uniqueArray(fc.integer({ min: 1, max: inches(11) - 1 }), {
      minLength: 1,
      maxLength: 24,
    });
    fc.assert(
      fc.property(places, fc.constantFrom(0.3, 0.6, 1), (at, scale) => {
        expect(textCollisions(drawNet(scoredStrip(at), { ...options, scale }))).toEqual([]);
      }),
      { seed: SEED, numRuns: 120 },
    );
  });

  it('and the check sees two texts that do', () => {
    const drawing = drawNet(tradeBox, options);
    const text = drawing.marks.find((mark) => mark.kind === 'text')!;
    expect(textCollisions({ ...drawing, marks: [...drawing.marks, text] })).not.toEqual([]);
  });
});

describe('a net drawn to fit', () => {
  it('stays inside its space and fills it one way', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 150, max: 400 }),
        fc.integer({ min: 70, max: 400 }),
        (widthMm, heightMm) => {
          const drawing = drawNetToFit(tradeBox, { widthMm, heightMm }, { ruler: inch, textMm: 4.94 });
          expect(drawing.widthMm).toBeLessThanOrEqual(widthMm);
          expect(drawing.heightMm).toBeLessThanOrEqual(heightMm);
          expect(Math.max(drawing.widthMm / widthMm, drawing.heightMm / heightMm)).toBeGreaterThan(0.85);
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
  });
});

describe('a net on a telephone', () => {
  // 350 × 200 px, where a millimetre is 3.78 px (CSS Values and Units 4).
  const space = { widthMm: 93, heightMm: 53 };
  const narrow = { ruler: inch, textMm: 4.5, show: { otherUnit: false } } as const;
  for (const style of STYLES)
    for (const piece of layNet(style, { sizes: {}, caliperUm: 300 }).pieces)
      it(`is seen, whatever numbers it has: ${style.id}, ${piece.id}`, () => {
        const alone = Math.min(
          space.widthMm / toMm(piece.blank.across),
          space.heightMm / toMm(piece.blank.up),
        );
        const drawn = drawNetToFit(piece, space, { ...narrow, least: 0.5 });
        const all = drawNetToFit(piece, space, narrow);
        expect(drawn.scale / alone).toBeGreaterThan(0.5);
        expect(drawn.scale).toBeGreaterThanOrEqual(all.scale);
        expect(drawn.heightMm).toBeLessThanOrEqual(space.heightMm);
      });
});

describe('every style', () => {
  for (const style of STYLES)
    for (const piece of layNet(style, { sizes: {}, caliperUm: 300 }).pieces)
      for (const faceUp of ['inside', 'outside'] as const)
        it(`is drawn with a row for every line and no number on another: ${style.id}, ${piece.id}, ${faceUp} up`, () => {
          const rows = tableOfLines(piece, faceUp);
          for (const ruler of [inch, metric]) {
            const drawing = drawNetToFit(
              piece,
              { widthMm: 190, heightMm: 150 },
              { ruler, textMm: 4.94, faceUp },
            );
            expect(keysOf(drawing.marks, isNetLine)).toEqual(new Set(rows.map((row) => row.key)));
            expect(textCollisions(drawing)).toEqual([]);
          }
        });
});
