import { outsideAtMost } from '../core/draw/step/outside-at-most';
import { type FamilyMember, type FamilyRule, findFamily } from '../core/fit';
import { cuttingToolOf } from '../core/plan';
import { inches, type LengthUnit, readLength, type Ticks, ticks, toMm } from '../core/units';
import { benchFor, makeBox } from './made-box';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { readRoom } from './read-room';
import { readSheet } from './read-sheet';
import { refuse } from './refuse';
import type { DeskRefusal, Given, Verb } from './verb';

const SLACK = inches(0, 1, 2); // source: our own, as on the Easy sizes page
const AIR = inches(0, 1, 8); // source: our own, as on the Easy sizes page
const MOST_MEMBERS = 5;

export const verb: Verb = {
  usage: `${BOX_USAGE} [--room WIDTH×DEPTH×HEIGHT] [--members 1-5] [--air LENGTH | --larger PERCENT] [--slack LENGTH] [--sheet ID]`,
  answers:
    'The same box for other contents, or a set of sizes that nest or grow by a percentage, all on easy marks.',
  words: { least: 0, most: 1 },
  options: {
    ...BOX_OPTIONS,
    room: 'one',
    members: 'one',
    air: 'one',
    larger: 'one',
    slack: 'one',
    sheet: 'one',
  },
  run: (given, desk) => {
    const asked = readBox(given, desk);
    if (!('style' in asked)) return asked;
    const refused: DeskRefusal[] = [];
    const { style, unit, tool, caliperUm } = asked;
    if (asked.own)
      return [
        refuse(
          'no-sizes',
          '--fold',
          'a net of your own',
          'a style',
          'A net of your own has no sizes to vary.',
        ),
      ];
    const box = makeBox(asked);
    const { width, depth, height } = box.net.inside;
    const need = readRoom(given, 'room', unit, refused) ?? [width, depth, height];
    const slack = readOne(given, 'slack', SLACK, unit, refused);
    const paper = readSheet(given.one['sheet'], unit, refused);
    const members = readCount(given.one['members'], refused);
    const rule = readRule(given, unit, refused);
    if (refused.length > 0 || !paper) return refused;
    const { bench, ruler } = benchFor(tool, unit);
    const family = findFamily(
      {
        style,
        caliperUm,
        need,
        slack,
        held: {},
        heldOptions: box.net.options,
        paper,
        tool: cuttingToolOf(tool),
        ruler,
        reach: bench.reach,
        members,
        rule,
      },
      (net) => outsideAtMost(net, caliperUm),
    );
    desk.print(
      JSON.stringify({ style: style.id, sheet: paper.id, members: [...family].map(describeMember) }, null, 2),
    );
    return [];
  },
};

const describeMember = ({ need, row, outside, ends }: FamilyMember) => ({
  roomAskedMm: need.map(toMm),
  ...(ends && {
    because: ends.because,
    wouldFit: ends.ways.map((way) =>
      way.kind === 'turned' ? { turnedMm: way.need.map(toMm) } : { way: way.kind },
    ),
  }),
  found: row && {
    sizesMm: Object.fromEntries(Object.entries(row.sizes).map(([name, length]) => [name, toMm(length)])),
    options: row.options,
    insideMm: row.inside.map(toMm),
    outsideAtMostMm: outside.map(toMm),
    roughness: row.roughness,
    sheetsPerBox: row.sheetsPerBox,
    blanks: row.blanks.map(({ piece, across, up }) => ({ piece, acrossMm: toMm(across), upMm: toMm(up) })),
  },
});

function readOne(
  given: Given,
  name: 'slack' | 'air',
  usual: Ticks,
  unit: LengthUnit,
  refused: DeskRefusal[],
): Ticks {
  const text = given.one[name];
  if (text === undefined) return usual;
  const read = readLength(text, unit);
  if (read.ok) return read.length;
  const says = `--${name}: “${text}” is not a length. ${read.reason} ${read.remedy}`;
  refused.push(refuse(read.code, `--${name}`, text, read.remedy, says));
  return ticks(0);
}

function readCount(text: string | undefined, refused: DeskRefusal[]): number {
  const count = text === undefined ? 1 : Number(text);
  if (Number.isInteger(count) && count >= 1 && count <= MOST_MEMBERS) return count;
  const says = `--members is “${text}”; a family has 1 to ${MOST_MEMBERS}.`;
  refused.push(refuse('members-out-of-range', '--members', text ?? '', `1 to ${MOST_MEMBERS}`, says));
  return 1;
}

function readRule(given: Given, unit: LengthUnit, refused: DeskRefusal[]): FamilyRule {
  const larger = given.one['larger'];
  if (larger === undefined) return { rule: 'nested', air: readOne(given, 'air', AIR, unit, refused) };
  if (given.one['air'] !== undefined) {
    const says = '--air is for sizes that nest, --larger for sizes that grow. Give one of them.';
    refused.push(refuse('air-or-larger', '--larger', larger, 'one of them', says));
  }
  const percent = Number(larger.replace(/\s*%$/, ''));
  if (!(percent > 0 && percent <= 200)) {
    const says = `--larger is “${larger}”; each size is 1 to 200 percent larger than the one before.`;
    refused.push(refuse('larger-out-of-range', '--larger', larger, '1 to 200', says));
  }
  return { rule: 'grown', percent };
}
