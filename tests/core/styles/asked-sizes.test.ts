import { expect, test } from 'vitest';
import { fillSizes, filmPatches, layNet } from '../../../src/core/net';
import { type BoxStyle, type Chosen, defaultChoices, STYLES, symbolsFor } from '../../../src/core/styles';
import { inches, type Ticks, ticks } from '../../../src/core/units/ticks';

/** The sizes that change the net, the ribbon through it or the film behind it, when they grow by 1/16 or 1/8 in or shrink by 1/16, read off the nets themselves. */
function sizesThatMatter(style: BoxStyle, options: Chosen): readonly string[] {
  const usual = Object.entries(fillSizes(style));
  // twice as large as usual, since a slot is not drawn where the panel is too small for it
  const sizes = Object.fromEntries(
    usual.map(([name, size]) => [name, style.symbols[name]?.role === 'size' ? ticks(2 * size) : size]),
  );
  const netOf = (other: Readonly<Record<string, Ticks>>) => {
    const box = layNet(style, { sizes: { ...sizes, ...other }, options, caliperUm: 300 });
    return JSON.stringify([box.pieces.map(({ faces, threads }) => [faces, threads]), filmPatches(box)]);
  };
  const drawn = netOf({});
  const step = inches(0, 1, 16);
  return Object.entries(sizes)
    .filter(([name, size]) =>
      [step, -step, 2 * step].some((by) => netOf({ [name]: ticks(size + by) }) !== drawn),
    )
    .map(([name]) => name);
}

/** Every choice of every option, all else at its first. */
const everyChoiceByItself = (style: BoxStyle): readonly Chosen[] => [
  defaultChoices(style),
  ...Object.entries(style.options ?? {}).flatMap(([option, { choices }]) =>
    choices.slice(1).map(({ id }) => ({ ...defaultChoices(style), [option]: id })),
  ),
];

test.for(STYLES.map((style) => [style.name, style] as const))(
  '%s asks for a size only where something is made of it, however it is built',
  ([, style]) => {
    for (const chosen of everyChoiceByItself(style)) {
      const asked = symbolsFor(style, chosen).map(([name]) => name);
      expect({ chosen, asked }).toEqual({ chosen, asked: sizesThatMatter(style, chosen) });
    }
  },
);

test('a size whose option is not told is found out', () => {
  const [pyramid] = STYLES.filter(({ id }) => id === 'square-pyramid');
  if (pyramid === undefined) throw new RangeError('no pyramid');
  const { given: _, ...always } = pyramid.symbols['punch'] ?? {};
  const untold = { ...pyramid, symbols: { ...pyramid.symbols, punch: always } } as BoxStyle;
  const chosen = defaultChoices(untold);
  expect(symbolsFor(untold, chosen).map(([name]) => name)).toContain('punch');
  expect(sizesThatMatter(untold, chosen)).not.toContain('punch');
});
