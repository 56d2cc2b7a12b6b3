import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkLimits } from '../../src/core/checks/check-limits';
import { type Blank, layNet, nameValues } from '../../src/core/net';
import type { AskedBox } from '../../src/core/proof/legal-boxes';
import { STYLES } from '../../src/core/styles';
import { inches, toMm } from '../../src/core/units/ticks';
import { SEED } from '../seed';
import { legalBoxes } from './legal-sizes';
import { LEAST_MM, sliversIn, sliversOf } from './slivers';

/**
 * The end of a pillow is one curve that touches the trimmed edge in its middle, and a cone's mouth has corners that touch it: there the cut runs
 * off the card at a slope of nought to ten degrees. What a hand misses there is a hair of a free edge.
 */
const RUNS_OFF = new Set(['pillow-pack', 'cornet', 'rolled-cone']);

/** So do corners that the maker asks to have rounded: along a coin, or by a corner punch. */
const isRounded = ({ options }: Partial<AskedBox>): boolean => (options?.['corners'] ?? 'none') !== 'none';

const someBoxes = (style: (typeof STYLES)[number]) => [
  { sizes: {}, caliperUm: 300, mark: inches(0, 1, 16) },
  ...fc.sample(legalBoxes(style), { seed: SEED, numRuns: 50 }).map((asked) => heeding(style, asked)),
];

/** A box as a maker makes it who heeds the warning of a narrow strip: 48 × 79 × 151 mm with a relief of 1 mm and square flaps had one of 0.6 mm. */
function heeding(style: (typeof STYLES)[number], asked: AskedBox): AskedBox {
  const { lengths } = nameValues(style, asked);
  const told = checkLimits(style, lengths, asked.mark, asked.options);
  const fix = told.find(({ code }) => code === 'square-flap-near-lid')?.fix;
  return fix ? { ...asked, sizes: { ...asked.sizes, [fix.symbol]: fix.value } } : asked;
}

/** How far a place is from the nearest side of the blank, mm. */
const offEdge = ([x, y]: readonly [number, number], { across, up }: Blank): number =>
  Math.min(x, y, toMm(across) - x, toMm(up) - y);

const found = (style: (typeof STYLES)[number]) =>
  someBoxes(style).flatMap((asked) =>
    layNet(style, asked).pieces.flatMap((piece) =>
      sliversOf(piece, LEAST_MM[asked.mark === inches(0, 1, 16) ? 'in' : 'mm']).map((sliver) => ({
        ...sliver,
        piece: piece.id,
        offEdge: offEdge(sliver.at, piece.blank),
        isRounded: isRounded(asked),
        asked: JSON.stringify(asked),
      })),
    ),
  );

describe('no cut that a hand cannot make: no sliver under 10 degrees or 1/16 in wide', () => {
  for (const style of STYLES.filter(({ id }) => !RUNS_OFF.has(id)))
    test(`${style.name}, 51 boxes`, { timeout: 60_000 }, () =>
      expect(found(style).filter((sliver) => !sliver.isRounded || sliver.offEdge >= LEAST_MM.in)).toEqual([]),
    );

  for (const style of STYLES.filter(({ id }) => RUNS_OFF.has(id)))
    test(`${style.name} runs off its blank within 1/16 in of the trimmed edge, and nowhere else`, {
      timeout: 60_000,
    }, () => {
      const all = found(style);
      expect(all.length).toBeGreaterThan(0);
      for (const { offEdge } of all) expect(offEdge).toBeLessThan(LEAST_MM.in);
    });
});

describe('slivers by hand', () => {
  test('a triangle 10 by 1 mm has an angle of 5.7 degrees, one of 10 by 2 mm 11.3', () => {
    expect(sliversIn([[[0, 0], [10, 0], [10, 1]]], LEAST_MM.in)).toMatchObject([{ kind: 'sharp', at: [0, 0] }]); // biome-ignore format: one row
    expect(sliversIn([[[0, 0], [10, 0], [10, 2]]], LEAST_MM.in)).toEqual([]); // biome-ignore format: one row
  });

  test('a strip 1 mm wide is too narrow in inches, one of 1.6 mm is not; a step as long as it is wide is none', () => {
    const strip = (wide: number, long: number) => [[[0, 0], [long, 0], [long, wide], [0, wide]]] as const; // biome-ignore format: one row
    expect(sliversIn(strip(1, 20), LEAST_MM.in).map(({ kind }) => kind)).toContain('narrow');
    expect(sliversIn(strip(1.6, 20), LEAST_MM.in)).toEqual([]);
    expect(sliversIn(strip(1, 20), LEAST_MM.mm)).toEqual([]);
    expect(sliversIn(strip(1, 1), LEAST_MM.in)).toEqual([]);
  });

  test('a fork between two cuts is seen through the waste, and not through the card', () => {
    // A notch 1 mm wide and 20 deep in a block of card: the waste is the notch; then the card is the notch and the waste all round it.
    const notch = [[0, 0], [20, 0], [20, 1], [0, 1]] as const; // biome-ignore format: one row
    const round = [[-30, -30], [60, -30], [60, 30], [-30, 30]] as const; // biome-ignore format: one row
    expect(sliversIn([notch], LEAST_MM.in).length).toBeGreaterThan(0);
    expect(sliversIn([round, [...notch].reverse()], LEAST_MM.in)).toEqual([]);
  });
});
