import { type BoxBeside, boxBeside, cuttingToolOf } from '../core/plan';
import { toMm } from '../core/units';
import { makeBox } from './made-box';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { readSheet } from './read-sheet';
import { refuse } from './refuse';
import type { DeskRefusal, Given, Verb } from './verb';

/** The second box is asked for by the same options with `with-` before them. */
const WITH = {
  'with-style': 'one',
  'with-set': 'many',
  'with-option': 'many',
  'with-recipe': 'one',
} as const;

export const verb: Verb = {
  usage: `${BOX_USAGE} [OTHER.json] [--with-style ID] [--with-recipe ID] [--with-set SYMBOL=LENGTH …] [--with-option NAME=CHOICE …] [--sheet ID]`,
  answers: 'Two boxes side by side: room, card, scores, boxes a sheet, hand work.',
  words: { least: 0, most: 2 },
  options: { ...BOX_OPTIONS, ...WITH, sheet: 'one' },
  run: (given, desk) => {
    if (given.words.length === 0 && given.one['with-style'] === undefined) {
      const says = 'Say which box stands beside it: --with-style, or one or two saved files.';
      return [refuse('no-second-box', '--with-style', '', 'a second box', says)];
    }
    const [first, second] = [
      readBox({ ...given, words: given.words.slice(0, 1) }, desk),
      readBox(otherOf(given), desk),
    ];
    const refused: DeskRefusal[] = [first, second].flatMap((asked) => ('style' in asked ? [] : asked));
    if (!('style' in first) || !('style' in second)) return refused;
    const sheet = readSheet(given.one['sheet'], first.unit, refused);
    if (refused.length > 0) return refused;
    const columns = [first, second].map((asked) => {
      const { name, styleName, net, bench } = makeBox(asked);
      return {
        name,
        style: styleName,
        ...describeBox(boxBeside(net, bench, cuttingToolOf(asked.tool), sheet)),
      };
    });
    desk.print(JSON.stringify({ sheet: sheet?.id, boxes: columns }, null, 2));
    return [];
  },
};

/** What was given for the second box, as if it stood alone; where no file is named for it, it lies in the first. */
function otherOf({ words, one, many }: Given): Given {
  const { 'with-style': style, 'with-recipe': recipe, unit, caliper } = one;
  return {
    words: style !== undefined && words.length < 2 ? [] : words.slice(-1),
    one: {
      ...(style === undefined ? {} : { style }),
      ...(recipe === undefined ? {} : { recipe }),
      ...(unit === undefined ? {} : { unit }),
      ...(caliper === undefined ? {} : { caliper }),
    },
    many: { set: many['with-set'] ?? [], option: many['with-option'] ?? [] },
  };
}

const describeBox = (box: BoxBeside) => ({
  insideMm: [box.inside.width, box.inside.depth, box.inside.height].map(toMm),
  cards: box.cards.map(({ piece, across, up }) => ({ piece, acrossMm: toMm(across), upMm: toMm(up) })),
  scores: box.scores,
  fenceSettings: box.settings,
  betweenMarks: box.betweenMarks,
  boxesPerSheet: box.boxesPerSheet,
  holdsMl: Number((box.roomMm3 / 1000).toFixed(1)),
  handSeconds: Math.round(box.seconds),
});
