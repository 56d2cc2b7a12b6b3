import fc from 'fast-check';
import { checkLimits } from '../../src/core/checks/check-limits';
import { fillSizes, nameValues } from '../../src/core/net';
import { type BoxStyle, type Chosen, evaluateForm, everyChoice, formOf } from '../../src/core/styles';
import { inches, type Ticks, ticks } from '../../src/core/units/ticks';

/** A box as a maker might ask for it: every size legal, on 1/16 in or 1 mm marks, in card from .2 to .5 mm. */
export interface Asked {
  readonly sizes: Readonly<Record<string, Ticks>>;
  readonly options: Chosen;
  readonly caliperUm: number;
  readonly mark: Ticks;
}

/** Any size within a symbol's range, half to double its default. */
function anySize(style: BoxStyle, symbol: string, mark: Ticks): fc.Arbitrary<Ticks> {
  const spec = style.symbols[symbol];
  if (spec === undefined) throw new RangeError(symbol);
  const [least, most] = [spec.min, spec.max].map((text) => evaluateForm(formOf(text), {})) as [Ticks, Ticks];
  const usual = fillSizes(style)[symbol] ?? least;
  const [low, high] = [Math.max(least, usual / 2), Math.min(most, usual * 2 + 4 * mark)];
  return fc
    .integer({ min: Math.ceil(low / mark), max: Math.floor(high / mark) })
    .map((marks) => ticks(marks * mark));
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

/** Mends sizes by the findings' own fixes, as a maker would tap them; null where that leads nowhere. */
function mend(style: BoxStyle, asked: Asked): Asked | null {
  let { sizes } = asked;
  for (let turn = 0; turn < 12; turn++) {
    const stops = checkLimits(
      style,
      nameValues(style, { ...asked, sizes }).lengths,
      asked.mark,
      asked.options,
    ).filter(({ severity }) => severity === 'stop');
    const [stop] = stops;
    if (stop === undefined) return { ...asked, sizes };
    if (stop.fix === undefined) return null;
    sizes = { ...sizes, [stop.fix.symbol]: stop.fix.value };
  }
  return null;
}

/** Legal boxes of a style, all its options among them. */
export const legalBoxes = (style: BoxStyle): fc.Arbitrary<Asked> =>
  fc
    .constantFrom(inches(0, 1, 16), ticks(320))
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
    .map((asked) => mend(style, asked))
    .filter((asked) => asked !== null);
