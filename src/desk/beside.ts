import { newSizesForRoom, type Room, sizesForRoom } from '../core/fit';
import { type BoxBeside, boxBeside, cuttingToolOf } from '../core/plan';
import { ticks, toMm } from '../core/units';
import { describeFinding } from './describe-finding';
import { benchFor, findingsOf, makeBox } from './made-box';
import { type AskedBox, BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { readRoom } from './read-room';
import { readSheet } from './read-sheet';
import { refuse } from './refuse';
import type { DeskRefusal, Given, Verb } from './verb';

/** The second box is asked for by the same options with `with-` before them. */
const WITH = {
  'with-style': 'one',
  'with-style-file': 'one',
  'with-set': 'many',
  'with-option': 'many',
  'with-recipe': 'one',
  'with-room': 'one',
} as const;

/** Either says the style of the second box, which then has no file of its own. */
const OWN_STYLE = ['with-style', 'with-style-file'] as const;

/** The second box as it is needed for a room: the first one's. */
const SAME = 'same';

export const verb: Verb = {
  usage: `${BOX_USAGE} [OTHER.json] [--with-style ID | --with-style-file STYLE.json] [--with-recipe ID] [--with-set SYMBOL=LENGTH …] [--with-option NAME=CHOICE …] [--with-room same|WIDTH×DEPTH×HEIGHT] [--sheet ID]`,
  answers:
    'Two boxes or styles compared: inside size, paper, scores, boxes per sheet, hand time, and any problems.',
  words: { least: 0, most: 2 },
  options: { ...BOX_OPTIONS, ...WITH, sheet: 'one' },
  run: (given, desk) => {
    if (given.words.length === 0 && OWN_STYLE.every((name) => given.one[name] === undefined)) {
      const says =
        'Name the box to compare with: --with-style, --with-style-file, or one or two saved files.';
      return [refuse('no-second-box', '--with-style', '', 'a second box', says)];
    }
    const [first, second] = [
      readBox({ ...given, words: given.words.slice(0, 1) }, desk),
      readBox(otherOf(given), desk),
    ];
    const refused: DeskRefusal[] = [first, second].flatMap((asked) => ('style' in asked ? [] : asked));
    if (!('style' in first) || !('style' in second)) return refused;
    const sheet = readSheet(given.one['sheet'], first.unit, refused);
    const room =
      given.one['with-room'] === SAME ? roomOf(first) : readRoom(given, 'with-room', second.unit, refused);
    if (room && second.own)
      refused.push(refuse('no-sizes', '--with-room', 'a net of your own', 'a style', NO_SIZES));
    if (refused.length > 0) return refused;
    const columns = [first, room ? forRoom(second, room) : second].map((asked) => {
      const box = makeBox(asked);
      const stops = findingsOf(asked, box).filter(({ severity }) => severity === 'stop');
      return {
        name: box.name,
        style: box.styleName,
        ...describeBox(boxBeside(box.net, box.bench, cuttingToolOf(asked.tool), sheet)),
        stops: stops.map((finding) => describeFinding(finding, box.ruler)),
      };
    });
    desk.print(JSON.stringify({ sheet: sheet?.id, boxes: columns }, null, 2));
    return [];
  },
};

const NO_SIZES = 'A net of your own has no sizes that a room could settle.';

const roomOf = (asked: AskedBox): Room => {
  const { width, depth, height } = makeBox(asked).net.inside;
  return [width, depth, height];
};

/** The same style at the least marks that give a room; what was set for it stays. */
function forRoom(asked: AskedBox, need: Room): AskedBox {
  const { style, caliperUm, chosen: options, set: held, tool, unit, recipe } = asked;
  const { ruler } = benchFor(tool, unit);
  const sizesOf = recipe ? sizesForRoom : newSizesForRoom;
  const sizes = sizesOf({ style, caliperUm, need, slack: ticks(0), ruler, held, options });
  return { ...asked, sizes: { ...sizes, ...held } };
}

/** What was given for the second box, as if it stood alone; where no file is named for it, it lies in the first. */
function otherOf({ words, one, many }: Given): Given {
  const { 'with-style': style, 'with-style-file': file, 'with-recipe': recipe, unit, caliper } = one;
  const named = style !== undefined || file !== undefined;
  return {
    words: named && words.length < 2 ? [] : words.slice(-1),
    one: {
      ...(style === undefined ? {} : { style }),
      ...(file === undefined ? {} : { 'style-file': file }),
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
  holdsMl: box.roomMm3 === null ? null : Number((box.roomMm3 / 1000).toFixed(1)),
  handSeconds: Math.round(box.seconds),
});
