import { type BoxNet, layNet, nameValues } from '../net';
import { type Ticks, ticks } from '../units';
import { type EasyMarkQuestion, type EasyRow, findEasyMarks } from './easy-marks';
import { valueAt } from './mark-forms';
import { limitsOf, overSymbols } from './over-symbols';
import { sizesForRoom } from './symbol-tries';
import { type WayOut, whatWouldFit } from './what-would-fit';

/** Width, depth and height. */
export type Room = readonly [Ticks, Ticks, Ticks];

/** How each member of a family follows from the one before: it goes into the next with so much air, or its room grows by so many per cent. */
export type FamilyRule =
  | { readonly rule: 'nested'; readonly air: Ticks }
  | { readonly rule: 'grown'; readonly percent: number };

export interface FamilyQuestion extends EasyMarkQuestion {
  readonly members: number;
  readonly rule: FamilyRule;
}

export interface FamilyMember {
  /** Inside room it was looked for with. */
  readonly need: Room;
  /** The easiest sizes that fit the sheet; null where there are none, and then the family ends. */
  readonly row: EasyRow | null;
  /** What the closed box takes up, card and all, at most; the need where there is no row. */
  readonly outside: Room;
  /** Where the family ends: what stands in the way, and what was tried and would fit. */
  readonly ends?: { readonly because: FamilyEnd; readonly ways: readonly WayOut[] };
}

/** The sheet is too small; the style has no such size; or no such size falls on the tool’s marks within the slack. */
export type FamilyEnd = 'sheet' | 'limits' | 'marks';

/**
 * A family of boxes of one style on easy marks, smallest first, one at a time. The first has the room asked for. `outsideOf` measures a
 * closed box, card and all, never too small: it stands above this room of the house.
 */
export function* findFamily(
  question: FamilyQuestion,
  outsideOf: (box: BoxNet) => Room,
): Generator<FamilyMember> {
  const { style, caliperUm, ruler, rule } = question;
  let need: Room = question.need;
  for (let member = 0; member < question.members; member++) {
    const rows = findEasyMarks({ ...question, need });
    const row = rows.find(({ sheetsPerBox }) => sheetsPerBox !== null);
    if (!row) {
      const because = rows.length > 0 ? 'sheet' : breaksLimits({ ...question, need }) ? 'limits' : 'marks';
      yield {
        need,
        row: null,
        outside: need,
        ends: { because, ways: whatWouldFit({ ...question, need }, rows, []) },
      };
      return;
    }
    const { sizes, options } = row;
    const outside = outsideOf(layNet(style, { sizes, options, caliperUm, mark: ruler.finest }));
    yield { need, row, outside };
    need =
      rule.rule === 'nested'
        ? eachSide(outside, (side) => side + rule.air)
        : eachSide(question.need, (side) => side * (1 + rule.percent / 100) ** (member + 1));
  }
}

/** Whether the least sizes that give the room are too large or too small for the style. */
function breaksLimits({ style, caliperUm, need, ruler, held, heldOptions }: EasyMarkQuestion): boolean {
  const options = heldOptions;
  const sizes = sizesForRoom({ style, caliperUm, need, slack: ticks(0), ruler, held, options });
  const at = { sizes, caliperUm, options, mark: ruler.finest };
  const { lengths } = nameValues(style, at);
  const values = Object.keys(style.symbols).map((name) => lengths[name] ?? 0);
  return limitsOf(style, options, overSymbols(style, at)).some((limit) => valueAt(limit, values) < 0);
}

const eachSide = ([width, depth, height]: Room, change: (side: number) => number): Room => [
  ticks(Math.ceil(change(width) - 1e-6)),
  ticks(Math.ceil(change(depth) - 1e-6)),
  ticks(Math.ceil(change(height) - 1e-6)),
];
