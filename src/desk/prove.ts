import { proveStyle, type StyleFault } from '../core/proof';
import { rulerBeside, toMm } from '../core/units';
import { describeFinding } from './describe-finding';
import { readStyleFile } from './read-style-file';
import { refuse } from './refuse';
import type { DeskRefusal, Given, Verb } from './verb';

const USUAL_BOXES = 50;
const MOST_BOXES = 500;

export const verb: Verb = {
  usage: 'STYLE.json [--boxes 1-500] [--seed NUMBER]',
  answers:
    'Checks a style file at 50 sizes within its limits: does it close, can it be folded in that order, does the item fit, do the steps make the net. Lists what fails, with the size that shows it.',
  words: { least: 1, most: 1 },
  options: { boxes: 'one', seed: 'one' },
  run: (given, desk) => {
    const refused: DeskRefusal[] = [];
    const boxes = readWhole(given, 'boxes', USUAL_BOXES, MOST_BOXES, refused);
    const seed = readWhole(given, 'seed', 1, 1_000_000, refused);
    if (refused.length > 0) return refused;
    const [path = ''] = given.words;
    const style = readStyleFile(path, desk, refused);
    if (!style) return refused;
    const { tried, faults } = proveStyle(style, { boxes, seed });
    desk.print(
      JSON.stringify(
        {
          style: style.id,
          name: style.name,
          tried,
          sound: faults.length === 0,
          faults: faults.map(describeFault),
        },
        null,
        2,
      ),
    );
    return [];
  },
};

function describeFault({ check, where, says, facts, remedy, at, boxes }: StyleFault) {
  const said = describeFinding(
    { code: check, severity: 'stop', where, says, facts, remedy },
    rulerBeside('in'),
  );
  return {
    check,
    where,
    says: said.says,
    remedy: said.remedy,
    factsMm: said.factsMm,
    boxes,
    at: at && {
      sizesMm: Object.fromEntries(Object.entries(at.sizes).map(([name, size]) => [name, toMm(size)])),
      options: at.options,
      caliperMm: at.caliperUm / 1000,
      markMm: toMm(at.mark),
    },
  };
}

function readWhole(given: Given, name: string, usual: number, most: number, refused: DeskRefusal[]): number {
  const text = given.one[name];
  const count = text === undefined ? usual : Number(text);
  if (Number.isInteger(count) && count >= 1 && count <= most) return count;
  const says = `--${name} is a whole number from 1 to ${most}, not “${text}”.`;
  refused.push(refuse('out-of-range', `--${name}`, text ?? '', `1 to ${most}`, says));
  return usual;
}
