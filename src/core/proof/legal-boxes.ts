import { checkLimits } from '../checks/check-limits';
import { fillSizes, nameValues } from '../net';
import { type BoxStyle, type Chosen, evaluateForm, everyChoice, formOf } from '../styles';
import { inches, type Ticks, ticks } from '../units/ticks';

/** A box as a maker might ask for it, on their marks. `caliperUm` is the thickness of the cardstock in micrometers. */
export interface AskedBox {
  readonly sizes: Readonly<Record<string, Ticks>>;
  readonly options: Chosen;
  readonly caliperUm: number;
  readonly mark: Ticks;
}

/** The sizes of a symbol worth trying, as whole numbers of marks: within its limits, from half to double its default. */
export function marksToTry(
  style: BoxStyle,
  symbol: string,
  mark: Ticks,
  usualSizes: Readonly<Record<string, Ticks>> = fillSizes(style),
): readonly [least: number, most: number] {
  const spec = style.symbols[symbol];
  if (spec === undefined) throw new RangeError(symbol);
  const [least, most] = [spec.min, spec.max].map((text) => evaluateForm(formOf(text), {})) as [Ticks, Ticks];
  const usual = usualSizes[symbol] ?? least;
  const [low, high] = [Math.max(least, usual / 2), Math.min(most, usual * 2 + 4 * mark)];
  return [Math.ceil(low / mark), Math.floor(high / mark)];
}

/** A box with its sizes mended by the fixes that the limits themselves offer; null where these lead nowhere. */
export function mendSizes(style: BoxStyle, asked: AskedBox): AskedBox | null {
  let { sizes } = asked;
  // Sizes met a second time would only lead round again: the same sizes are mended in the same way.
  const met = new Set<string>();
  for (let turn = 0; turn < 12; turn++) {
    const { lengths } = nameValues(style, { ...asked, sizes });
    const stop = checkLimits(style, lengths, asked.mark, asked.options).find(
      ({ severity }) => severity === 'stop',
    );
    if (stop === undefined) return { ...asked, sizes };
    const key = Object.values(sizes).join(' ');
    if (stop.fix === undefined || met.has(key)) return null;
    met.add(key);
    sizes = { ...sizes, [stop.fix.symbol]: stop.fix.value };
  }
  return null;
}

/** Thinnest and thickest cardstock tried, micrometers. source: common practice, no source */
const CARD_UM = [200, 500] as const;

/**
 * Boxes of a style within its limits, all its options among them, on marks of 1/16 in and of 1 mm: first the defaults, then any. `draw` gives
 * numbers from 0 up to 1; the same numbers give the same boxes. Fewer than `count` only where limits contradict each other.
 */
export function legalBoxes(style: BoxStyle, count: number, draw: () => number): readonly AskedBox[] {
  const between = (least: number, most: number) => least + Math.floor(draw() * (most - least + 1));
  const oneOf = <Value>(values: readonly Value[]): Value | undefined => values[between(0, values.length - 1)];
  const addOns = Object.entries(style.options ?? {}).filter(([, { addOn }]) => addOn);
  const usualSizes = fillSizes(style);
  const ways = everyChoice(style);
  const anyBox = (): AskedBox => {
    const mark = oneOf([inches(0, 1, 16), ticks(320)]) ?? ticks(320);
    const sizes = Object.keys(style.symbols).map((symbol) => {
      const [least, most] = marksToTry(style, symbol, mark, usualSizes);
      return [symbol, ticks(between(least, Math.max(least, most)) * mark)];
    });
    const added = addOns.map(([option, { choices }]): [string, string] => [option, oneOf(choices)?.id ?? '']);
    const built = oneOf(ways) ?? {};
    return {
      sizes: Object.fromEntries(sizes) as AskedBox['sizes'],
      options: draw() < 0.5 ? built : { ...built, ...Object.fromEntries(added) },
      caliperUm: between(...CARD_UM),
      mark,
    };
  };
  const usual = { sizes: usualSizes, options: {}, caliperUm: 305, mark: inches(0, 1, 16) };
  const boxes = [mendSizes(style, usual)];
  for (let turn = 0; boxes.length < count && turn < 20 * count; turn++) {
    const box = mendSizes(style, anyBox());
    if (box !== null) boxes.push(box);
  }
  return boxes.filter((box) => box !== null);
}
