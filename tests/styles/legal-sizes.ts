import fc from 'fast-check';
import { type AskedBox, marksToTry, mendSizes } from '../../src/core/proof/legal-boxes';
import { type BoxStyle, type Chosen, everyChoice } from '../../src/core/styles';
import { inches, type Ticks, ticks } from '../../src/core/units/ticks';

/** Any size worth trying, on the marks. */
function anySize(style: BoxStyle, symbol: string, mark: Ticks): fc.Arbitrary<Ticks> {
  const [min, max] = marksToTry(style, symbol, mark);
  return fc.integer({ min, max }).map((marks) => ticks(marks * mark));
}

/** Any way a style is built; half the time with some of its add-ons. */
export const anyOptions = (style: BoxStyle): fc.Arbitrary<Chosen> =>
  fc
    .record({
      built: fc.constantFrom(...everyChoice(style)),
      added: fc.record(
        Object.fromEntries(
          Object.entries(style.options ?? {})
            .filter(([, { addOn }]) => addOn)
            .map(([option, { choices }]) => [option, fc.constantFrom(...choices.map(({ id }) => id))]),
        ),
      ),
      plain: fc.boolean(),
    })
    .map(({ built, added, plain }) => (plain ? built : { ...built, ...added }));

/** Legal boxes of a style, all its options among them. */
export const legalBoxes = (
  style: BoxStyle,
  marks: readonly Ticks[] = [inches(0, 1, 16), ticks(320)],
): fc.Arbitrary<AskedBox> =>
  fc
    .constantFrom(...marks)
    .chain((mark) =>
      fc.record({
        sizes: fc.record(
          Object.fromEntries(
            Object.keys(style.symbols).map((symbol) => [symbol, anySize(style, symbol, mark)]),
          ),
        ),
        options: anyOptions(style),
        caliperUm: fc.integer({ min: 200, max: 500 }),
        mark: fc.constant(mark),
      }),
    )
    .map((asked) => mendSizes(style, asked))
    .filter((asked) => asked !== null);
