import fc from 'fast-check';
import { checkLimits } from '../../../src/core/checks/check-limits';
import { type BoxNet, layNet, nameValues } from '../../../src/core/net';
import { type BoxStyle, evaluateForm, formOf } from '../../../src/core/styles';
import { inches, type Ticks, ticks } from '../../../src/core/units';
import { anyOptions } from '../../styles/legal-sizes';

/** A style at random sizes on a grid of marks, within its own limits, with any of its options. */
export const randomBox = (style: BoxStyle, mark: Ticks): fc.Arbitrary<BoxNet> =>
  fc
    .record({
      sizes: fc.record(
        Object.fromEntries(Object.keys(style.symbols).map((name) => [name, onMark(style, name, mark)])),
      ),
      caliperUm: fc.integer({ min: 200, max: 450 }),
      options: anyOptions(style),
    })
    .filter((sizing) => {
      const { lengths } = nameValues(style, { ...sizing, mark });
      return checkLimits(style, lengths, mark, sizing.options).every(({ severity }) => severity !== 'stop');
    })
    .map((sizing) => layNet(style, { ...sizing, mark }));

/** No size beyond this: it fits no bench, and slows the search for sound boxes. */
const LARGEST = inches(9);

function onMark(style: BoxStyle, name: string, mark: Ticks): fc.Arbitrary<Ticks> {
  const symbol = style.symbols[name];
  const min = symbol ? evaluateForm(formOf(symbol.min), {}) : 0;
  const max = symbol ? evaluateForm(formOf(symbol.max), {}) : 0;
  return fc
    .integer({ min: Math.ceil(min / mark), max: Math.floor(Math.min(max, LARGEST) / mark) })
    .map((marks) => ticks(marks * mark));
}
